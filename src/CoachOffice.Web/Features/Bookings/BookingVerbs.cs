using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Bookings;

namespace CoachOffice.Web.Features.Bookings;

/// <summary>What can be done about a booking on its page.</summary>
public sealed class BookingVerbs(MoveBooking move, BookingEnds ends, AddSeat add, MarkAttendance mark, WriteBookingNote write)
{
    internal Task<Outcome<BookingId>> Add(BookingId id, StudentId student, Actor actor) => add.For(id, student, actor);

    internal Task<Outcome<BookingId>> Mark(BookingId id, SeatId seat, bool? came, Actor actor) => mark.Of(id, seat, came, actor);

    internal Task<Outcome<BookingId>> Release(BookingId id, SeatId seat, CancelReason reason, Actor actor) => ends.Release.Of(id, seat, reason, actor);

    internal Task<Outcome<BookingId>> Cancel(BookingId id, int version, CancelReason reason, Actor actor) => ends.Cancel.Of(id, version, reason, actor);

    internal Task<Outcome<int>> CancelRest(BookingId id, CancelReason reason, Actor actor) => ends.Rest.From(id, reason, actor);

    internal Task<Outcome<BookingId>> TakeBack(BookingId id, Actor actor) => ends.TakeBack.Of(id, actor);

    internal Task<Outcome<BookingId>> Move(BookingId id, int version, MoveForm form, Actor actor) => move.To(id, version, form, actor);

    internal Task<Outcome<BookingId>> Write(BookingId id, int version, string note, Actor actor) => write.On(id, version, note, actor);
}
