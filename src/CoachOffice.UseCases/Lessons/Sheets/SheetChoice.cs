using CoachOffice.Domain.Measuring;

namespace CoachOffice.UseCases.Lessons.Sheets;

/// <summary>A reading sheet to pick from.</summary>
/// <param name="Key">What a lesson remembers it by.</param>
/// <param name="Name">As the coach reads it.</param>
/// <param name="Measures">What is on it.</param>
public sealed record SheetChoice(string Key, string Name, IReadOnlyList<MeasureId> Measures)
{
    /// <summary>Set for a coach's own sheet.</summary>
    public Guid? Id { get; init; }

    /// <summary>The version an own sheet is edited at.</summary>
    public int Version { get; init; }
}
