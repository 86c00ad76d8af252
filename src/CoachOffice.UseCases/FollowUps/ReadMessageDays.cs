using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>What will go in the weeks ahead, counted by day and kind.</summary>
public sealed class ReadMessageDays(ChosenMessages chosen, PracticeClock clock)
{
    /// <summary>Four whole weeks, beginning with the Monday of this one.</summary>
    public const int Days = 28;

    /// <summary>Every day of them, those without messages too. What waits for a yes is counted with what goes by itself.</summary>
    public async Task<Outcome<IReadOnlyList<MessageDay>>> Ahead(MessageChoice choice, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(choice);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach) return NotAllowed.To("see messages");
        var (zone, today) = (await clock.Zone(stop), await clock.Today(stop));
        var first = today.PlusDays(1 - (int)today.DayOfWeek);
        var until = zone.AtStartOfDay(first.PlusDays(Days)).ToInstant();
        var whole = choice with { Day = null };
        var found = new List<(LocalDate Day, MessageKind Kind, bool Waits)>();
        foreach (var filter in (MessageFilter[])[MessageFilter.Open, MessageFilter.AwaitsApproval])
        {
            var rows = await (await chosen.Of(filter, whole, stop)).Where(m => m.DueAt < until).Select(m => new { m.DueAt, m.Kind }).ToListAsync(stop);
            found.AddRange(rows.Select(r => (LocalDate.Max(today, r.DueAt.InZone(zone).Date), r.Kind, filter == MessageFilter.AwaitsApproval)));
        }

        var days = found.ToLookup(f => f.Day);
        return Outcome<IReadOnlyList<MessageDay>>.Of([.. Enumerable.Range(0, Days).Select(first.PlusDays).Select(day => Day(day, today, [.. days[day]]))]);
    }

    private static MessageDay Day(LocalDate day, LocalDate today, IReadOnlyList<(LocalDate Day, MessageKind Kind, bool Waits)> found) => new(
        day,
        day < today,
        [.. found.GroupBy(f => f.Kind).OrderByDescending(g => g.Count()).ThenBy(g => g.Key).Select(g => new MessageCount(g.Key, g.Count()))],
        found.Count(f => f.Waits));
}

/// <summary>One day of the weeks ahead.</summary>
/// <param name="Day">Which.</param>
/// <param name="IsOver">It lies before today.</param>
/// <param name="Counts">How many of each kind, the most first.</param>
/// <param name="Waiting">How many of them wait for a yes.</param>
public sealed record MessageDay(LocalDate Day, bool IsOver, IReadOnlyList<MessageCount> Counts, int Waiting)
{
    public int Total => Counts.Sum(c => c.Count);
}

/// <summary>So many messages of a kind.</summary>
public sealed record MessageCount(MessageKind Kind, int Count);
