using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Plans;

namespace CoachOffice.Web.Features.Plans;

/// <summary>Whatever a form of the plan's page posts, as typed.</summary>
public sealed class PlanPost
{
    public int Version { get; set; }

    public Guid StageId { get; set; }

    public string? Drill { get; set; }

    public string? Sets { get; set; }

    public string? Reps { get; set; }

    public string? SessionsPerWeek { get; set; }

    public string? MinutesPerSession { get; set; }

    public string? Cue { get; set; }

    /// <summary>The drill to use instead.</summary>
    public string? Other { get; set; }

    /// <summary>"earlier" or "later".</summary>
    public string? Way { get; set; }

    public string? Reason { get; set; }

    public string? Comment { get; set; }

    public string? Message { get; set; }

    /// <summary>Why a state is changed, in the coach's words.</summary>
    public string? Because { get; set; }

    public string? RestartsOn { get; set; }

    public Guid CheckIn { get; set; }

    internal Outcome<EditOf> Edit(PlanId plan) => Terms.TryParse<EditReason>(Reason, out var reason)
        ? new EditOf { Plan = plan, Version = Version, StageId = StageId, Reason = reason, Comment = Comment ?? "" }
        : new Refusal("edit-reason", "Pick why you depart from the draft; the rulebook learns from it.", nameof(Reason));

    internal Outcome<DrillCounts> Counts()
    {
        var refusals = new List<Refusal>();
        var counts = new DrillCounts
        {
            Sets = Count(Sets, nameof(Sets), "sets", refusals),
            Reps = Count(Reps, nameof(Reps), "repetitions", refusals),
            SessionsPerWeek = Count(SessionsPerWeek, nameof(SessionsPerWeek), "days a week", refusals),
            MinutesPerSession = Count(MinutesPerSession, nameof(MinutesPerSession), "minutes", refusals),
            Cue = Cue ?? "",
        };
        return refusals.Count > 0 ? Outcome<DrillCounts>.Refused(refusals) : counts;
    }

    private static int Count(string? text, string field, string what, List<Refusal> refusals)
    {
        if (NumberEntry.One(text).TryGet(out var number) && number is >= 1 and <= 500 && double.IsInteger(number)) return (int)number;
        refusals.Add(new("count-wrong", $"Write the {what} as a whole number from 1 on; '{text}' is none.", field));
        return 0;
    }
}
