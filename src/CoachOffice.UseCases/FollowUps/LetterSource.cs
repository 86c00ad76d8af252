using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>What a plan's letters are made of besides the facts that decide whether they go.</summary>
/// <param name="Draft">The draft it was made from, as stored.</param>
/// <param name="RulebookSha256">The book it was drafted by.</param>
/// <param name="LessonOn">The lesson's day.</param>
/// <param name="Delivery">Stable name of the plan's own mail once that went, else null.</param>
public sealed record LetterSource(string Draft, string RulebookSha256, LocalDate LessonOn, string? Delivery)
{
    /// <summary>The club of that lesson.</summary>
    public required Club Club { get; init; }

    /// <summary>How often each measure was read then.</summary>
    public required IReadOnlyDictionary<MeasureId, int> Swings { get; init; }
}
