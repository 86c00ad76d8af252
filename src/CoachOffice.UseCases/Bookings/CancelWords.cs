using System.Globalization;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>The terms as one sentence, said before a cancellation happens.</summary>
public static class CancelWords
{
    /// <summary>What cancelling costs now, and until when it costs nothing.</summary>
    public static string Of(CancelCost cost, string currency, DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(cost);
        if (!cost.IsLate) return $"Cancelled by the student until {Moment(cost.FreeUntil, zone)}, nothing is owed.";
        var over = $"The notice ended {Moment(cost.FreeUntil, zone)}";
        if (cost.TakesCredit) return $"{over}: when the student cancels, the lesson credit is used up.";
        return cost.FeeMinor == 0 ? $"{over}, but nothing is owed." : $"{over}: when the student cancels, {new Money(cost.FeeMinor, Currency.Of(currency))} is owed.";
    }

    private static string Moment(Instant at, DateTimeZone zone) => at.InZone(zone).ToString("dddd d MMMM, HH:mm", CultureInfo.InvariantCulture);
}
