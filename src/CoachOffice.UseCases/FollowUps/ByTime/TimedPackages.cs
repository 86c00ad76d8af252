using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Ledger.Packages;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.UseCases.FollowUps.ByTime;

/// <summary>Packages whose last day comes near with lessons nobody has booked, and those with a single one left.</summary>
public sealed class TimedPackages(OfficeDb db, ReadMessageRules rules, PackageShelf shelf, PracticeClock clock) : ITimedMessages
{
    /// <inheritdoc/>
    public async Task<IReadOnlyList<DueMessage>> Due(CancellationToken stop)
    {
        var (before, dates, today) = ((await rules.Of(MessageKind.PackageEnding, stop)).Timing, new FollowUpDates(await clock.Zone(stop)), await clock.Today(stop));
        var open = await db.Packages.AsNoTracking().Where(p => p.ClosedAt == null && (p.ValidUntil == null || p.ValidUntil >= today)).ToListAsync(stop);
        if (open.Count == 0) return [];
        var credits = await shelf.CreditsOf(open, stop);
        var (soon, next) = (today.PlusDays(before + Ahead.Days), dates.NextMorning(clock.Now));
        var left = open.Where(p => credits[p.Id] is { IsEnded: false, Free: > 0 }).ToList();
        var ending = left.Where(p => p.ValidUntil <= soon)
            .Select(p => Letter(p, Instant.Max(next, dates.Morning(p.ValidUntil!.Value.PlusDays(-before))), LocalDatePattern.Iso.Format(p.ValidUntil!.Value), $"the package ends within {before} days, and lessons in it have no day"));
        var last = left.Where(p => p.Lessons > 1 && credits[p.Id].Free == 1).Select(p => Letter(p, next, PackageLetter.LastLesson, "one lesson of the package has no day, and it is the last"));
        return [.. ending, .. last];
    }

    private static DueMessage Letter(Package package, Instant at, string occasion, string reason) => new()
    {
        Kind = MessageKind.PackageEnding,
        StudentId = package.StudentId,
        SubjectId = package.Id.Value,
        DueAt = at,
        Reason = reason,
        Occasion = occasion,
    };
}
