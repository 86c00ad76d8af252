using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.FollowUps;
using Microsoft.EntityFrameworkCore;
using NodaTime.Text;

namespace CoachOffice.UseCases.Ledger.Documents;

/// <summary>Sends a receipt or statement to the payer by mail, through the outbox. Asked for twice on a day it goes once.</summary>
public sealed class MailDocument(OfficeDb db, OfficeMessages messages, PracticeClock clock, AuditTrail trail)
{
    /// <summary>The document, or why not.</summary>
    public async Task<Outcome<DocumentId>> Send(DocumentId id, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTakePayments) return NotAllowed.To("send receipts");
        var document = await db.LedgerDocuments.AsNoTracking().SingleOrDefaultAsync(d => d.Id == id, stop);
        if (document is null) return new Refusal("document-not-found", "There is no such receipt or statement.");
        if (!await db.Payers.AnyAsync(p => p.Id == document.PayerId && p.Email != "" && p.ErasedAt == null, stop)) return new Refusal("payer-no-mail", "This payer has no mail address. Write one on the account, or print this.");
        await messages.Write(Due(document, LocalDatePattern.Iso.Format(await clock.Today(stop))), stop);
        trail.Add(actor, "document-mailed", AuditSubject.Of(id));
        await db.TrySave(stop);
        return id;
    }

    private DueMessage Due(LedgerDocument document, string today) => new()
    {
        Kind = document.Kind == DocumentKind.Receipt ? MessageKind.Receipt : MessageKind.Statement,
        StudentId = null,
        SubjectId = document.Id.Value,
        DueAt = clock.Now,
        AtOnce = true,
        Reason = "asked for",
        Occasion = today,
    };
}
