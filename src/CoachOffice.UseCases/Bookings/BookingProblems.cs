namespace CoachOffice.UseCases.Bookings;

/// <summary>Codes of why a letter about a booking did not go; in words in <see cref="FollowUps.Problems"/>.</summary>
internal static class BookingProblems
{
    /// <summary>The person has no mail address and was not to be written to by surprise.</summary>
    public const string NoMail = "no-mail";

    /// <summary>The lesson is over, cancelled or on again: the letter would say what is not so.</summary>
    public const string Past = "booking-past";
}
