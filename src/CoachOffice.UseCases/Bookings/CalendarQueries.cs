using System.Linq.Expressions;
using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>How often what some days of the calendar show was saved: one row by one query, of all coaches or of one, asked with the start and the end of the days.</summary>
internal static class CalendarQueries
{
    private static readonly Expression<Func<OfficeDb, Instant, Instant, IQueryable<Booking>, IQueryable<CalendarSaves>>> Saves = (db, start, end, bookings) =>
        from practice in db.Practices
        select new CalendarSaves
        {
            Bookings = bookings.Count(),
            OfBookings = bookings.Sum(b => b.Version),
            Seats = bookings.SelectMany(b => b.Seats).Count(),
            OfStudents = bookings.SelectMany(b => b.Seats).Join(db.Students, s => s.StudentId, s => s.Id, (_, s) => s.Version).Sum(),
            OfChoices = db.Offerings.Sum(o => o.Version) + db.Places.Sum(p => p.Version) + db.Resources.Sum(r => r.Version),
            Closed = db.HoursExceptions.Count(e => e.Until > start && e.From < end),
            LastClosed = db.HoursExceptions.Where(e => e.Until > start && e.From < end).Max(e => (string?)e.Id.ToString()),
            Busy = db.BusyTimes.Count(b => b.Until > start && b.From < end),
            LastBusy = db.BusyTimes.Where(b => b.Until > start && b.From < end).Max(b => (string?)b.Id.ToString()),
        };

    private static readonly CompiledQueryOfTwo<Instant, Instant, CalendarSaves> All = new(AboutAll((db, start, end) => db.Bookings.Where(b => b.Starts > start && b.Starts < end)));

    private static readonly CompiledQueryOfThree<Instant, Instant, AccountId, CalendarSaves> One =
        new(AboutOne((db, start, end, coach) => db.Bookings.Where(b => b.CoachId == coach && b.Starts > start && b.Starts < end)));

    /// <summary>The row; null before there is a practice.</summary>
    public static async Task<CalendarSaves?> Of(OfficeDb db, Interval time, AccountId? coach, CancellationToken stop)
    {
        var start = time.Start - TakenTime.Longest;
        var rows = coach is { } one ? await One.Rows(db, (start, time.End, one), stop) : await All.Rows(db, start, time.End, stop);
        return rows.FirstOrDefault();
    }

    private static Expression<Func<OfficeDb, Instant, Instant, IQueryable<CalendarSaves>>> AboutAll(Expression<Func<OfficeDb, Instant, Instant, IQueryable<Booking>>> bookings) =>
        Expression.Lambda<Func<OfficeDb, Instant, Instant, IQueryable<CalendarSaves>>>(Written(bookings), bookings.Parameters);

    private static Expression<Func<OfficeDb, Instant, Instant, AccountId, IQueryable<CalendarSaves>>> AboutOne(Expression<Func<OfficeDb, Instant, Instant, AccountId, IQueryable<Booking>>> bookings) =>
        Expression.Lambda<Func<OfficeDb, Instant, Instant, AccountId, IQueryable<CalendarSaves>>>(Written(bookings), bookings.Parameters);

    private static Expression Written(LambdaExpression bookings) =>
        new Filled(new Dictionary<Expression, Expression>
        {
            [Saves.Parameters[0]] = bookings.Parameters[0],
            [Saves.Parameters[1]] = bookings.Parameters[1],
            [Saves.Parameters[2]] = bookings.Parameters[2],
            [Saves.Parameters[3]] = bookings.Body,
        }).Visit(Saves.Body);

    private sealed class Filled(IReadOnlyDictionary<Expression, Expression> with) : ExpressionVisitor
    {
        protected override Expression VisitParameter(ParameterExpression node) => with.TryGetValue(node, out var value) ? value : node;
    }
}
