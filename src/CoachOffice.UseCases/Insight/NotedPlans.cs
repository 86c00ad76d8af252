using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.FollowUps;
using NodaTime;

namespace CoachOffice.UseCases.Insight;

/// <summary>
/// Plans that were sent enough notes lately to be asked about, if they also went unanswered. Counting them goes through weeks of messages, so the list is
/// kept for a minute, the pace of the sweep that sends them: a plan comes up to a minute later, and what takes it off the list again is asked each time.
/// </summary>
public sealed class NotedPlans(TimeProvider time)
{
    private static readonly TimeSpan Life = TimeSpan.FromMinutes(1);

    private static readonly CompiledQueryOfTwo<Instant, int, PlanId> Noted = new((db, since, fewest) =>
        db.Messages.Where(m => m.State == MessageState.Sent && m.DueAt >= since && (m.Kind == MessageKind.PracticeNudge || m.Kind == MessageKind.WeeklyCheckIn) && m.PlanId != null)
            .GroupBy(m => m.PlanId!.Value).Where(g => g.Count() >= fewest).Select(g => g.Key));

    private Kept? _kept;

    internal async Task<IReadOnlyList<PlanId>> Since(OfficeDb db, Instant since, CancellationToken stop)
    {
        if (Volatile.Read(ref _kept) is { } kept && time.GetElapsedTime(kept.ReadAt) < Life) return kept.Plans;
        var readAt = time.GetTimestamp();
        var plans = await Noted.Rows(db, since, Encouragement.MostUnanswered, stop);
        Volatile.Write(ref _kept, new Kept(plans, readAt));
        return plans;
    }

    private sealed record Kept(IReadOnlyList<PlanId> Plans, long ReadAt);
}
