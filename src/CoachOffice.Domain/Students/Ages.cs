using NodaTime;

namespace CoachOffice.Domain.Students;

/// <summary>Ages on a day.</summary>
public static class Ages
{
    /// <summary>Completed years on a day.</summary>
    public static int On(LocalDate born, LocalDate day) => Period.Between(born, day, PeriodUnits.Years).Years;

    /// <summary>Under 18: the guardian is the contact.</summary>
    public static bool IsMinor(LocalDate born, LocalDate day) => On(born, day) < 18;
}
