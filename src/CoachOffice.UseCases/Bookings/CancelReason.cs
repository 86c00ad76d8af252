namespace CoachOffice.UseCases.Bookings;

/// <summary>Who wants a lesson cancelled: what it costs depends on it.</summary>
public enum CancelReason
{
    /// <summary>The student: the terms hold.</summary>
    ByStudent,

    /// <summary>The practice, or the weather: nothing is owed.</summary>
    ByPractice,
}
