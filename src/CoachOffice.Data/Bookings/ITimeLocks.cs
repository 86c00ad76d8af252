using CoachOffice.Domain.Bookings;

namespace CoachOffice.Data.Bookings;

/// <summary>Makes whoever wants the same coach, bay or student wait until this transaction ends: asked and taken is then one step.</summary>
public interface ITimeLocks
{
    /// <summary>Waits until nobody else holds one of them. Only within a transaction.</summary>
    Task Hold(IReadOnlyList<TimeHolder> holders, CancellationToken stop);

    /// <summary>The same without waiting: false when somebody else holds one of them. For whoever holds others already, as two who wait crosswise would wait for ever.</summary>
    Task<bool> Try(IReadOnlyList<TimeHolder> holders, CancellationToken stop);
}
