using CoachOffice.Domain.Ledger;

namespace CoachOffice.UseCases.Ledger;

/// <summary>Which entry is wrong, and why.</summary>
/// <param name="Id">Of the entry that takes it back; made when the form was shown.</param>
/// <param name="Entry">The wrong one.</param>
/// <param name="Reason">For the books; no names.</param>
public sealed record Reversing(EntryId Id, EntryId Entry, string Reason);
