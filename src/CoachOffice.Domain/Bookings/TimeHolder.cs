using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;

namespace CoachOffice.Domain.Bookings;

/// <summary>Whose time can be taken once only.</summary>
public sealed record TimeHolder(Guid Id, TimeHolderKind Kind)
{
    public static TimeHolder Of(AccountId coach) => new(coach.Value, TimeHolderKind.Coach);

    public static TimeHolder Of(ResourceId resource) => new(resource.Value, TimeHolderKind.Resource);

    public static TimeHolder Of(StudentId student) => new(student.Value, TimeHolderKind.Student);

    /// <summary>A booking itself: who changes it waits for who is changing it.</summary>
    public static TimeHolder Of(BookingId booking) => new(booking.Value, TimeHolderKind.Booking);

    /// <summary>Everyone and everything a booking takes time of, always in the same order, so that two who lock them cannot wait for each other.</summary>
    public static IReadOnlyList<TimeHolder> AllOf(Booking booking)
    {
        ArgumentNullException.ThrowIfNull(booking);
        IEnumerable<TimeHolder> bay = booking.ResourceId is { } resource ? [Of(resource)] : [];
        return [.. booking.Seats.Where(s => s.Counts).Select(s => Of(s.StudentId)).Append(Of(booking.CoachId)).Concat(bay).OrderBy(h => h.Id)];
    }
}
