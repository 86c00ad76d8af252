using Vogen;

namespace CoachOffice.Domain.Bookings;

/// <summary>Identity of a place where lessons are given.</summary>
[ValueObject<Guid>]
public readonly partial struct PlaceId;

/// <summary>Identity of a bay or a room.</summary>
[ValueObject<Guid>]
public readonly partial struct ResourceId;

/// <summary>Identity of something a practice offers.</summary>
[ValueObject<Guid>]
public readonly partial struct OfferingId;

/// <summary>Identity of a booking.</summary>
[ValueObject<Guid>]
public readonly partial struct BookingId;

/// <summary>Identity of one student's part in a booking.</summary>
[ValueObject<Guid>]
public readonly partial struct SeatId;

/// <summary>Identity of a row of bookings made by one rule.</summary>
[ValueObject<Guid>]
public readonly partial struct SeriesId;
