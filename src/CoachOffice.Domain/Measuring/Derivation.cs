namespace CoachOffice.Domain.Measuring;

/// <summary>How a measure follows from others when it was not read itself.</summary>
/// <param name="Kind">Sum adds all parts; Ratio divides the first part by the second.</param>
/// <param name="Parts">The measures it is made of, in order.</param>
public sealed record Derivation(DerivationKind Kind, IReadOnlyList<MeasureId> Parts);
