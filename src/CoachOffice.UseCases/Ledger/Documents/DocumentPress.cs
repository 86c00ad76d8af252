using CoachOffice.Data;
using CoachOffice.Data.Ledger;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Ledger.Documents;

/// <summary>Gives a document its number and keeps it. The counter is raised in the caller's transaction: whoever wants the next number waits, and a failure gives the number back.</summary>
public sealed class DocumentPress(OfficeDb db, ReadPractice practice, LedgerBook book, PracticeClock clock, INewIds ids)
{
    /// <summary>Adds the document to the caller's transaction; the number is taken, nothing else is saved here.</summary>
    public async Task<LedgerDocument> Print(DocumentKind kind, DocumentDraft draft, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(draft);
        ArgumentNullException.ThrowIfNull(actor);
        var today = await clock.Today(stop);
        var document = new LedgerDocument
        {
            Id = DocumentId.From(ids.Next()),
            Kind = kind,
            Year = today.Year,
            Number = await db.NextNumber(kind, today.Year, stop),
            PayerId = draft.PayerId,
            EntryId = draft.EntryId,
            IssuedOn = today,
            At = clock.Now,
            By = actor.Name,
            TotalMinor = draft.TotalMinor,
            Content = draft.Content,
        };
        db.LedgerDocuments.Add(document);
        return document;
    }

    /// <summary>Who issues it and to whom, with the parts of today.</summary>
    public async Task<DocumentContent> Heads(PayerId id, LocalDate lastDay, CancellationToken stop = default)
    {
        var terms = await book.Terms(stop);
        var payer = await db.Payers.AsNoTracking().SingleAsync(p => p.Id == id, stop);
        var name = terms.LegalName.Length > 0 ? terms.LegalName : (await practice.Now(stop))!.Name;
        return new DocumentContent
        {
            From = [name, .. Lines(terms.PostalAddress)],
            TaxNumber = terms.TaxNumber,
            To = [payer.Name, .. Lines(payer.PostalAddress)],
            Currency = (await book.Currency(stop)).Code,
            LastDay = lastDay,
            Lines = [],
        };
    }

    private static IEnumerable<string> Lines(string text) => text.Split('\n').Where(line => line.Length > 0);
}
