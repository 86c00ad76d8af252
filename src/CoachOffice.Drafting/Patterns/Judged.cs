using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Patterns;

/// <summary>What the patterns of a book have to say of one lesson.</summary>
/// <param name="Fired">Those that hold, by precedence, then id.</param>
/// <param name="Matches">At least every pattern that holds or nearly does, held against the lesson, in the same order.</param>
internal sealed record Judged(IReadOnlyList<Pattern> Fired, IReadOnlyList<PatternMatch> Matches);
