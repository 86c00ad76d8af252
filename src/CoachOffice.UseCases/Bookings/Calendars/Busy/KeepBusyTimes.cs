using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Calendars.Busy;

/// <summary>Keeps the busy times of a calendar a coach brought, in place of what came under the same name before.</summary>
public sealed class KeepBusyTimes(OfficeDb db, AuditTrail trail, INewIds ids)
{
    private const int LongestName = 60;

    /// <summary>How many are kept, or why none.</summary>
    public async Task<Outcome<int>> From(string source, IReadOnlyList<Interval> times, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(times);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach || actor.Account is not { } coach) return NotAllowed.To("keep busy times");
        if (Wrong(source) is { } wrong) return wrong;
        if (times.Count is 0 or > BusyReader.MostTimes) return new Refusal("busy-count", "Pick the file once more.", "File");
        var name = source.Trim();
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        await db.BusyTimes.Where(b => b.CoachId == coach && b.Source == name).ExecuteDeleteAsync(stop);
        db.BusyTimes.AddRange(times.Select(time => BusyTime.Of(ids.Next(), coach, name, time)));
        trail.Add(actor, "busy-times-kept", AuditSubject.Of(coach), $"count:{times.Count}");
        await db.SaveChangesAsync(stop);
        await transaction.CommitAsync(stop);
        return times.Count;
    }

    private static Refusal? Wrong(string source)
    {
        if (!OneLine.Shows(source) || source.Trim().Length > LongestName) return new("busy-name", $"Give the calendar a name of up to {LongestName} characters; a later file under the same name takes its place.", "Name");
        return OneLine.Fits(source) ? null : new("busy-name-line", OneLine.Wanted, "Name");
    }
}
