using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>What is sought.</summary>
/// <param name="Minutes">Length of the lesson.</param>
/// <param name="BufferMinutes">Minutes the coach keeps free afterwards; they may reach beyond the hours.</param>
/// <param name="StepMinutes">Starts are at multiples of it in the local hour; it divides 60.</param>
/// <param name="Starts">Within which the lesson may begin, half-open.</param>
/// <param name="Zone">Of the practice.</param>
public sealed record FreeTimeWish(int Minutes, int BufferMinutes, int StepMinutes, Interval Starts, DateTimeZone Zone)
{
    /// <summary>Length of the lesson.</summary>
    public Duration Length => Duration.FromMinutes(Minutes);

    /// <summary>Length of the coach's time.</summary>
    public Duration CoachLength => Duration.FromMinutes(Minutes + BufferMinutes);
}
