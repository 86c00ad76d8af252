using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Bookings;

namespace CoachOffice.Web.Features.Bookings;

/// <summary>Books once or in a row, and says what came of it.</summary>
public sealed class NewBookingDeeds(BookLesson book, BookSeries series)
{
    internal async Task<Outcome<(BookingId First, string Said)>> Do(BookingForm form, RepeatInput repeat, Actor actor)
    {
        if (repeat.Rule(form.Start) is not { } rule)
        {
            var one = await book.As(form, actor);
            return one.TryGet(out var id) ? (id, "The lesson is booked.") : Outcome<(BookingId, string)>.Refused(one.Refusals);
        }

        var row = await series.As(new SeriesForm(form, rule, repeat.SkipTaken), actor);
        return row.TryGet(out var made) ? (made.Bookings[0], Said(made)) : Outcome<(BookingId, string)>.Refused(row.Refusals);
    }

    private static string Said(SeriesBooked made) => made.Skipped.Count == 0
        ? $"{made.Bookings.Count} lessons are booked."
        : $"{made.Bookings.Count} lessons are booked; left out, as they were taken: {string.Join(", ", made.Skipped.Select(s => s.ToString("d MMM", System.Globalization.CultureInfo.InvariantCulture)))}.";
}
