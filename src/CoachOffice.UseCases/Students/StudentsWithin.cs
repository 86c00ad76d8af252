using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students.Groups;

namespace CoachOffice.UseCases.Students;

/// <summary>What a list of students is narrowed down to; null is not narrowed.</summary>
public sealed record StudentsWithin
{
    /// <summary>Members of this group alone.</summary>
    public GroupId? Group { get; init; }

    /// <summary>Those this payer pays for.</summary>
    public PayerId? Payer { get; init; }

    /// <summary>Those whom this list of students brought or filled.</summary>
    public Guid? List { get; init; }
}
