using CoachOffice.Domain;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>How far an import is.</summary>
/// <param name="State">Where it stands.</param>
/// <param name="Percent">Of the file, 0 to 100.</param>
/// <param name="Rows">Rows read so far.</param>
/// <param name="Refusals">Why it was refused, when it was.</param>
public sealed record ImportProgress(ImportState State, int Percent, int Rows, IReadOnlyList<Refusal> Refusals);
