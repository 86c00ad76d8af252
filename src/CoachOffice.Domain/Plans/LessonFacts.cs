using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.Domain.Plans;

/// <summary>Everything a draft is made from besides the rulebook.</summary>
public sealed record LessonFacts
{
    /// <summary>The day the plan is for; the only notion of time in a draft.</summary>
    public required LocalDate AsOf { get; init; }

    public required StudentFacts Student { get; init; }

    public required Club Club { get; init; }

    /// <summary>One value per measure.</summary>
    public required IReadOnlyList<MeasuredValue> Readings { get; init; }

    /// <summary>Drills tried before.</summary>
    public IReadOnlyList<TriedDrill> Tried { get; init; } = [];

    /// <summary>Age in whole years, the younger of the two it may be.</summary>
    public int Age => AsOf.Year - Student.BirthYear - 1;
}
