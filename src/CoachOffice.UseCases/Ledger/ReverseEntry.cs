using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Ledger.Packages;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Ledger;

/// <summary>Takes a wrong entry back by another one; both stay in the books. What a lesson made is taken back at the lesson, by taking back its mark.</summary>
public sealed class ReverseEntry(OfficeDb db, MoneyDoor door, LedgerBook book, PackageShelf shelf)
{
    private static readonly Refusal NotFound = new("entry-not-found", "There is no such entry.");

    /// <summary>The reversal, or why not; the same form again gives the same one.</summary>
    public async Task<Outcome<EntryId>> From(Reversing form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepBooks) return NotAllowed.To("reverse entries");
        List<Refusal> wrong = [.. MoneyEntry.CheckWords(form.Reason, 120, nameof(form.Reason))];
        if (!OneLine.Shows(form.Reason)) wrong.Add(new("reversal-reason", "Say why in a few words; no names, the books outlive the person.", nameof(form.Reason)));
        if (wrong.Count > 0) return Outcome<EntryId>.Refused(wrong);
        var payer = await db.LedgerEntries.Where(e => e.Id == form.Entry).Select(e => (PayerId?)e.PayerId).SingleOrDefaultAsync(stop);
        if (payer is null) return NotFound;
        return await door.Write(new MoneyDeed(form.Id, payer.Value, actor, "entry-reversed"), facts => Reverse(form, facts, stop), stop);
    }

    /// <summary>True when such an entry may be reversed here, if it was not before.</summary>
    internal static bool May(LedgerEntry entry) => Against(entry) is null;

    private async Task<Outcome<LedgerEntry>> Reverse(Reversing form, EntryFacts facts, CancellationToken stop)
    {
        var entry = await db.LedgerEntries.Include(e => e.Postings).SingleAsync(e => e.Id == form.Entry, stop);
        if (Against(entry) is { } never) return never;
        if (await db.LedgerEntries.AnyAsync(e => e.Reverses == entry.Id && e.Id != form.Id, stop)) return new Refusal("reversed-before", "This entry was reversed already.");
        if (entry.Kind == EntryKind.PackageSale && await shelf.Unsell(entry.PackageId!.Value, stop) is { } used) return used;
        return await book.TakeBack(entry, facts with { Text = form.Reason }, stop);
    }

    private static Refusal? Against(LedgerEntry entry) => entry switch
    {
        { Kind: EntryKind.Reversal } => new("reversal-reversed", "This entry reversed another one. Write what is right as a new entry instead."),
        { SeatId: not null } => new("reversal-of-lesson", "A lesson made this entry. Take back its mark in the calendar, and the entry goes back with it."),
        { Kind: EntryKind.PackageEnd } => new("reversal-of-end", "This package ended. Move its last day instead, and its lessons are there again."),
        { Kind: EntryKind.PackageReturn } => new("reversal-of-return", "These lessons were given back. Sell the package again instead."),
        _ => null,
    };
}
