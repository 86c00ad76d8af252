namespace CoachOffice.Domain.Bookings;

/// <summary>What a practice sells by the hour. Words of the trade at large.</summary>
public enum OfferingKind
{
    /// <summary>One student, one coach.</summary>
    Private,

    /// <summary>Two students who come together.</summary>
    Pair,

    /// <summary>Several students, up to the offering's capacity.</summary>
    Group,

    /// <summary>For players under 18.</summary>
    Junior,

    /// <summary>Given while playing.</summary>
    OnCourse,

    /// <summary>Clips are sent, the answer is promised within a time; it takes no hour of the calendar.</summary>
    RemoteReview,
}
