using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Calendars.Feeds;

/// <summary>
/// The lessons of a calendar that is followed: two months back and all to come. A coach sees who comes, a student only what concerns them: never another
/// student, a price or a note.
/// </summary>
public sealed class FeedEntries(OfficeDb db, ReadLessons lessons, IClock clock)
{
    private static readonly Duration Back = Duration.FromDays(60);

    /// <summary>What it holds, or null when its person is gone.</summary>
    public async Task<FoundEntries?> Of(CalendarFeed feed, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(feed);
        var practice = await db.Practices.AsNoTracking().SingleAsync(stop);
        var host = new Uri(practice.PublicAddress).Host;
        if (feed.CoachId is { } coach) return await Coach(coach, practice.Name, host, stop);
        return feed.StudentId is { } student && await db.Students.AnyAsync(s => s.Id == student && s.ErasedAt == null && s.ArchivedAt == null, stop)
            ? new FoundEntries(practice.Name, await Entries(Theirs(student), new LessonEntries(host, StudentSees), stop))
            : null;
    }

    private async Task<FoundEntries?> Coach(AccountId coach, string practice, string host, CancellationToken stop)
    {
        var name = await db.Users.Where(u => u.Id == coach.Value && u.DisabledAt == null && u.Policy != Policy.Desk).Select(u => u.DisplayName).SingleOrDefaultAsync(stop);
        if (name is null) return null;
        var own = db.Bookings.Where(b => b.CoachId == coach && (b.Status == BookingStatus.Held || b.Status == BookingStatus.Confirmed));
        var names = await Names(own, stop);
        return new FoundEntries($"{practice}: {name}", await Entries(own, new LessonEntries(host, lesson => CoachSees(lesson, names)), stop));
    }

    private IQueryable<Booking> Theirs(StudentId student) => db.Bookings.Where(b => (b.Status == BookingStatus.Held || b.Status == BookingStatus.Confirmed)
        && b.Seats.Any(s => s.StudentId == student && (s.Status == SeatStatus.Held || s.Status == SeatStatus.Booked || s.Status == SeatStatus.Attended || s.Status == SeatStatus.NoShow)));

    private async Task<IReadOnlyList<CalendarEntry>> Entries(IQueryable<Booking> own, LessonEntries form, CancellationToken stop)
    {
        var since = clock.GetCurrentInstant() - Back;

        // A row that goes on is read from its beginning: what is not there would be left out of its rule.
        var rows = await own.Where(b => b.Starts >= since && b.SeriesId != null).Select(b => b.SeriesId).Distinct().ToListAsync(stop);
        var found = await lessons.Of(own.Where(b => b.Starts >= since || rows.Contains(b.SeriesId)), stop);
        var series = await db.BookingSeries.AsNoTracking().Where(s => rows.Contains(s.Id)).ToDictionaryAsync(s => s.Id, stop);
        return [.. found.GroupBy(l => l.Booking.SeriesId?.Value ?? l.Booking.Id.Value).SelectMany(group => Together([.. group], series, form))];
    }

    private static IEnumerable<CalendarEntry> Together(IReadOnlyList<LessonFacts> group, Dictionary<SeriesId, BookingSeries> series, LessonEntries form) =>
        group is { Count: > 1 } && group[0].Booking.SeriesId is { } id ? form.Row(series[id], group) : group.Select(form.Single);

    private async Task<Dictionary<StudentId, string>> Names(IQueryable<Booking> own, CancellationToken stop)
    {
        var since = clock.GetCurrentInstant() - Back - Back;
        var ids = own.Where(b => b.Ends >= since || b.SeriesId != null).SelectMany(b => b.Seats).Select(s => s.StudentId);
        return await db.Students.Where(s => ids.Contains(s.Id)).ToDictionaryAsync(s => s.Id, s => (s.GivenName + " " + s.FamilyName).Trim(), stop);
    }

    private static LessonWords StudentSees(LessonFacts lesson) => new($"{lesson.Offering.Name} with {lesson.Coach}");

    private static LessonWords CoachSees(LessonFacts lesson, Dictionary<StudentId, string> names)
    {
        var coming = lesson.Booking.Seats.Where(s => s.Counts).Select(s => names.GetValueOrDefault(s.StudentId, "")).Where(n => n.Length > 0).Order(StringComparer.Ordinal).ToList();
        return coming switch
        {
            [] => new($"{lesson.Offering.Name} (nobody yet)"),
            [var only] when lesson.Booking.Capacity == 1 => new($"{lesson.Offering.Name}: {only}"),
            _ => new($"{lesson.Offering.Name} ({coming.Count} of {lesson.Booking.Capacity})", string.Join('\n', coming)),
        };
    }
}
