using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Bookings.Visits;

namespace CoachOffice.Web.Features.Bookings.Private;

/// <summary>What a lesson costs, and what changing it would, in sentences that are said before anything happens.</summary>
internal static class VisitWords
{
    public static string Price(VisitView visit, VisitorView visitor) =>
        visit.PaysByPackage ? "one lesson of your package" : visit.PriceMinor == 0 ? "nothing" : new Money(visit.PriceMinor, visitor.Currency).ToString();

    /// <summary>The terms with the exact last moment, before booking.</summary>
    public static string Terms(VisitView visit, VisitorView visitor, VisitClock clock)
    {
        var late = Owed(visit.CostLate, visitor);
        return $"Until {clock.Moment(visit.Cost.FreeUntil)} cancelling or moving costs nothing; after that {late ?? "it costs nothing either"}.";
    }

    /// <summary>What cancelling costs at this moment.</summary>
    public static string Cancelling(VisitView visit, VisitorView visitor, VisitClock clock)
    {
        if (visit.Status == SeatStatus.Held) return "Letting it go costs nothing.";
        if (!visit.Cost.IsLate) return $"Until {clock.Moment(visit.Cost.FreeUntil)} this costs nothing.";
        return $"The notice of {Hours(visitor.Terms.NoticeHours)} is over: {Owed(visit.Cost, visitor) ?? "still, nothing is owed"}.";
    }

    /// <summary>What became of a lesson that is over or will not be.</summary>
    public static string State(VisitView visit) => visit.Status switch
    {
        SeatStatus.Attended => "you came",
        SeatStatus.NoShow => "missed",
        SeatStatus.CancelledLate => "cancelled late",
        SeatStatus.Released => "cancelled",
        SeatStatus.Lapsed => "not booked in time",
        _ => "over",
    };

    private static string? Owed(CancelCost cost, VisitorView visitor)
    {
        if (cost.TakesCredit) return "the lesson credit is used up";
        return cost.FeeMinor == 0 ? null : $"{Share(visitor.Terms.LateFeePercent)}, {new Money(cost.FeeMinor, visitor.Currency)}, is owed";
    }

    private static string Share(int percent) => percent switch { 100 => "the whole price", 50 => "half the price", _ => $"{percent} % of the price" };

    private static string Hours(int hours) => hours == 1 ? "1 hour" : $"{hours} hours";
}
