using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Bookings;
using NodaTime;

namespace CoachOffice.Web.Features.Bookings;

/// <summary>A column of the calendar: a day, or one coach's day.</summary>
/// <param name="Heading">A day or a name.</param>
/// <param name="Day">Which day.</param>
/// <param name="Coach">Whose, when the columns are coaches.</param>
/// <param name="Items">By start.</param>
/// <param name="Shades">Closed and busy times.</param>
internal sealed record CalendarColumn(string Heading, LocalDate Day, AccountId? Coach, IReadOnlyList<CalendarItem> Items, IReadOnlyList<ShadeItem> Shades);

/// <summary>A booking at its place in a column.</summary>
/// <param name="Booking">What.</param>
/// <param name="Row">Quarter of an hour from the first hour shown.</param>
/// <param name="Rows">Quarters of an hour.</param>
/// <param name="Lane">Beside others that overlap.</param>
internal sealed record CalendarItem(CalendarBooking Booking, int Row, int Rows, Lane Lane);

/// <summary>A closed or busy time at its place in a column.</summary>
internal sealed record ShadeItem(string Why, int Row, int Rows);
