namespace CoachOffice.Drafting.Replay;

/// <summary>What an edit does to one lesson's draft.</summary>
/// <param name="CutOff">How far the lesson was followed.</param>
/// <param name="IsGradedElse">A finding has another side or grade, as far as was looked.</param>
/// <param name="Difference">What differs, when anything does.</param>
public sealed record ReplayResult(CutOff CutOff, bool IsGradedElse, DraftDifference? Difference)
{
    internal static ReplayResult Cut(CutOff at, bool gradedElse) => new(at, gradedElse, null);
}
