using CoachOffice.Domain.Bookings;

namespace CoachOffice.Web.Shell.Wording;

/// <summary>Offerings as a person reads them.</summary>
internal static class OfferingWords
{
    /// <summary>"private lesson, 60 minutes" or "review from afar, answered within 2 days".</summary>
    public static string Of(Offering offering) => offering.Kind == OfferingKind.RemoteReview
        ? $"{Of(offering.Kind)}, answered within {Hours(offering.TurnaroundHours)}"
        : $"{Of(offering.Kind)}, {Minutes(offering.Minutes)}{(offering.Capacity > 1 ? $", up to {offering.Capacity} students" : "")}";

    public static string Of(OfferingKind kind) => kind switch
    {
        OfferingKind.Private => "private lesson",
        OfferingKind.Pair => "two together",
        OfferingKind.Group => "group",
        OfferingKind.Junior => "juniors",
        OfferingKind.OnCourse => "on the course",
        _ => "review from afar",
    };

    /// <summary>"45 minutes", "1 hour", "1 hour 30 minutes".</summary>
    public static string Minutes(int minutes) => (minutes / 60, minutes % 60) switch
    {
        (0, var rest) => $"{rest} minutes",
        (1, 0) => "1 hour",
        (var hours, 0) => $"{hours} hours",
        (1, var rest) => $"1 hour {rest} minutes",
        (var hours, var rest) => $"{hours} hours {rest} minutes",
    };

    private static string Hours(int hours) => hours % 24 == 0 ? hours == 24 ? "1 day" : $"{hours / 24} days" : hours == 1 ? "1 hour" : $"{hours} hours";
}
