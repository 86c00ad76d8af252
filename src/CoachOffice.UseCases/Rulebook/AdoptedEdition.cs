using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>An edition that came, or on trial would come, into force.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Sha256">Hash of its book.</param>
/// <param name="Changes">What differs from the edition before.</param>
/// <param name="Warnings">What to look at although it serves.</param>
public sealed record AdoptedEdition(int Number, string Sha256, IReadOnlyList<EntryChange> Changes, IReadOnlyList<Fault> Warnings);
