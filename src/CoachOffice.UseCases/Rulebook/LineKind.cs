namespace CoachOffice.UseCases.Rulebook;

/// <summary>What became of a line.</summary>
public enum LineKind
{
    Same,
    Gone,
    Come,
}
