using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Ledger.Documents;

/// <summary>Writes the statement of a period: every entry that moved what is owed, with the balance before and after.</summary>
public sealed class IssueStatement(OfficeDb db, LedgerBook book, DocumentPress press, PracticeClock clock, AuditTrail trail)
{
    /// <summary>The statement, or why not.</summary>
    public async Task<Outcome<DocumentId>> For(StatementForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTakePayments) return NotAllowed.To("write statements");
        if (form.LastDay < form.FirstDay || form.FirstDay < form.LastDay.PlusYears(-5)) return new Refusal("statement-days", "The last day comes after the first, within five years.", nameof(form.LastDay));
        if (form.LastDay > await clock.Today(stop)) return new Refusal("statement-future", "A statement ends today or earlier: what is to come is not written yet.", nameof(form.LastDay));
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        await book.Hold(form.Payer, stop);
        if (!await db.Payers.AnyAsync(p => p.Id == form.Payer, stop)) return PayerRefusals.NotFound;
        var (content, closing) = await Content(form, stop);
        var statement = await press.Print(DocumentKind.Statement, new DocumentDraft(form.Payer, null, closing, content), actor, stop);
        trail.Add(actor, "statement-written", AuditSubject.Of(statement.Id), $"number:{statement.Year}-{statement.Number}");
        await db.SaveChangesAsync(stop);
        await transaction.CommitAsync(stop);
        return statement.Id;
    }

    private async Task<(DocumentContent Content, long Closing)> Content(StatementForm form, CancellationToken stop)
    {
        var entries = await db.LedgerEntries.AsNoTracking().Include(e => e.Postings).Where(e => e.PayerId == form.Payer && e.On <= form.LastDay).OrderBy(e => e.On).ThenBy(e => e.At).ThenBy(e => e.Id).ToListAsync(stop);
        var opening = entries.Where(e => e.On < form.FirstDay).Sum(e => e.SumOn(LedgerAccount.Receivable));
        var its = entries.Where(e => e.On >= form.FirstDay && e.Postings.Any(p => p.Account == LedgerAccount.Receivable)).ToList();
        var content = await press.Heads(form.Payer, form.LastDay, stop) with
        {
            FirstDay = form.FirstDay,
            OpeningMinor = opening,
            Lines = [.. its.Select(e => new DocumentLine(e.On, EntryWords.Of(e), e.SumOn(LedgerAccount.Receivable)))],
            Taxes = TaxShare.Sum(its.SelectMany(TaxShare.Of)),
        };
        return (content, opening + its.Sum(e => e.SumOn(LedgerAccount.Receivable)));
    }
}
