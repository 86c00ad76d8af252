using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Own;

namespace CoachOffice.Drafting.Reading;

/// <summary>A rulebook as it serves: read without a fault, its text kept, named by the hash of its meaning.</summary>
/// <param name="Book">The rulebook.</param>
/// <param name="Text">The files it was read from.</param>
/// <param name="Sha256">SHA-256 of the canonical form, lower-case hexadecimal: comments, layout, order of entries and split over files do not change it.</param>
/// <param name="Cases">The worked cases beside the patterns.</param>
public sealed record LoadedRulebook(Rulebook Book, RulebookText Text, string Sha256, IReadOnlyList<PatternCase> Cases)
{
    /// <summary>What in it is a practice's own.</summary>
    public OwnRules Own { get; init; } = OwnRules.None;

    /// <summary>The measures' order numbers as written; the book keeps only the rows that follow from them.</summary>
    public IReadOnlyDictionary<MeasureId, int> Orders { get; init; } = new Dictionary<MeasureId, int>();
}
