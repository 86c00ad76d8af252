using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings.Calendars;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Books a row of lessons in one transaction. Each keeps its wall clock across clock changes, and each can be moved or cancelled by itself later.</summary>
public sealed class BookSeries(OfficeDb db, BookingDoor door, BookLesson book, BookingEffects effects)
{
    /// <summary>Lessons of one row at most: two years of weeks.</summary>
    public const int Most = 104;

    /// <summary>What was booked, or why nothing was.</summary>
    public async Task<Outcome<SeriesBooked>> As(SeriesForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("book lessons");
        var zone = (await door.Zone(stop)).Id;
        if (Dates(form, zone) is not { } starts) return new Refusal("series-rule", $"Say how often and how many: from 2 to {Most} lessons.", "Repeat");
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        if (form.First.Id is { } sent && await Before(sent, stop) is { } before) return before;
        var series = BookingSeries.Of(SeriesId.From(door.NewId()), form.Rule, form.First.Start, zone, door.Now);
        db.BookingSeries.Add(series);
        var outcome = await BookAll(form, series, starts, stop);
        if (!outcome.TryGet(out var made)) return Drop(outcome.Refusals);
        await effects.ToldAll(made.Bookings, stop);
        if (await door.Keep(made.Bookings[0].Id, actor, "series-booked", stop) != Saved.Yes) return BookingRefusals.Taken;
        await transaction.CommitAsync(stop);
        return new SeriesBooked([.. made.Bookings.Select(b => b.Id)], made.Skipped);
    }

    private async Task<Outcome<(IReadOnlyList<Booking> Bookings, IReadOnlyList<LocalDateTime> Skipped)>> BookAll(SeriesForm form, BookingSeries series, IReadOnlyList<LocalDateTime> starts, CancellationToken stop)
    {
        var (made, skipped, wrong) = (new List<Booking>(), new List<LocalDateTime>(), new List<Refusal>());
        foreach (var start in starts)
        {
            var outcome = await book.Add(form.First with { Id = start == form.First.Start ? form.First.Id : null, Start = start }, stop);
            if (outcome.TryGet(out var booking))
            {
                booking.BelongTo(series.Id, start);
                made.Add(booking);

                // The next one has to see this one's time.
                await db.SaveChangesAsync(stop);
            }
            else if (outcome.Refusals.Any(r => r.Code is not (BookingRefusals.TakenCode or "too-far")))
            {
                return Outcome<(IReadOnlyList<Booking>, IReadOnlyList<LocalDateTime>)>.Refused(outcome.Refusals);
            }
            else
            {
                skipped.Add(start);
                wrong.Add(new Refusal(outcome.Refusals[0].Code, $"{start.ToString("ddd d MMM, HH:mm", System.Globalization.CultureInfo.InvariantCulture)}: {outcome.Refusals[0].Sentence}", outcome.Refusals[0].Field));
            }
        }

        return made.Count == 0 || (wrong.Count > 0 && !form.SkipTaken) ? Outcome<(IReadOnlyList<Booking>, IReadOnlyList<LocalDateTime>)>.Refused(wrong) : (made, skipped);
    }

    // The same form sent twice: what the first made.
    private async Task<Outcome<SeriesBooked>?> Before(BookingId sent, CancellationToken stop)
    {
        if (await db.Bookings.Where(b => b.Id == sent).Select(b => new { b.SeriesId }).SingleOrDefaultAsync(stop) is not { } there) return null;
        var all = await db.Bookings.Where(b => b.SeriesId == there.SeriesId).OrderBy(b => b.Starts).Select(b => b.Id).ToListAsync(stop);
        return new SeriesBooked(all, []);
    }

    private Outcome<SeriesBooked> Drop(IReadOnlyList<Refusal> refusals)
    {
        db.ChangeTracker.Clear();
        return Outcome<SeriesBooked>.Refused(refusals);
    }

    private static IReadOnlyList<LocalDateTime>? Dates(SeriesForm form, string zone)
    {
        if (!form.Rule.Contains("COUNT=", StringComparison.Ordinal) && !form.Rule.Contains("UNTIL=", StringComparison.Ordinal)) return null;
        var starts = RuleDates.Of(form.Rule, form.First.Start, zone);
        return starts.Count is >= 2 and <= Most ? starts : null;
    }
}
