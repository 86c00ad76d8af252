using CoachOffice.Domain.Access;

namespace CoachOffice.UseCases.Lessons.Sheets;

/// <summary>How somebody wants to see a lesson.</summary>
/// <param name="Actor">Whose own sheets are offered.</param>
public sealed record SheetWish(Actor Actor)
{
    /// <summary>The sheet to show; null for the one the lesson was read by.</summary>
    public string? Key { get; init; }

    /// <summary>Ids of measures to show besides, since something was typed for them.</summary>
    public IReadOnlyCollection<string> Also { get; init; } = [];
}
