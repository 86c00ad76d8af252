using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Students;

/// <summary>What adding and changing a student share.</summary>
public abstract class StudentFormPage : OfficePage
{
    private const int FewestGoals = 3;
    private const int EmptyLimits = 2;

    [BindProperty]
    public StudentForm Input { get; set; } = new();

    /// <summary>How many goals the form has room for.</summary>
    public int GoalRows => Math.Max(FewestGoals, Input.Goals.Count);

    /// <summary>How many limits the form has room for: those there are and two more.</summary>
    public int LimitRows => Math.Max(Input.Limits.Count, Input.Limits.Count(l => !string.IsNullOrWhiteSpace(l.Region)) + EmptyLimits);
}
