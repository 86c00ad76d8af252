using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.FollowUps;
using Microsoft.EntityFrameworkCore;
using MimeKit;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.UseCases.Ledger.Documents;

/// <summary>Receipts and statements as mail: the lines of the document itself, no link and nothing attached. Never repeated by guess.</summary>
public sealed class DocumentLetters(OfficeDb db, Letters letters) : IOfficeLetter
{
    private static readonly LocalDatePattern Day = LocalDatePattern.CreateWithInvariantCulture("d MMMM uuuu");

    /// <inheritdoc/>
    public IReadOnlyList<MessageKind> Kinds => [MessageKind.Receipt, MessageKind.Statement];

    /// <inheritdoc/>
    public bool MayRepeat => false;

    /// <inheritdoc/>
    public async Task<SendingVerdict> MayGo(OfficeFacts facts, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var document = await Document(facts.Message, stop);
        if (document.EntryId is { } entry && await db.LedgerEntries.AnyAsync(e => e.Reverses == entry, stop)) return new SendingVerdict.Never("payment-reversed");
        return await db.Payers.AnyAsync(p => p.Id == document.PayerId && p.ErasedAt == null, stop) ? new SendingVerdict.Go() : new SendingVerdict.Never("payer-erased");
    }

    /// <inheritdoc/>
    public async Task<MailRecipient?> Recipient(OfficeFacts facts, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var payer = await Payer(facts.Message, stop);
        return payer.Email.Length > 0 ? new MailRecipient(payer.Name, payer.Email, false) : null;
    }

    /// <inheritdoc/>
    public async Task<MimeMessage> Write(OfficeFacts facts, MailRecipient recipient, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(recipient);
        var document = await Document(facts.Message, stop);
        return MailForm.Of(letters.Render(facts.Message.Kind, Say(document, facts, recipient), facts.Words), OfficeEnvelopes.For(facts, recipient));
    }

    /// <inheritdoc/>
    public async Task<string> Addressee(Message message, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(message);
        return (await Payer(message, stop)).Name;
    }

    private static DocumentLetterFacts Say(LedgerDocument document, OfficeFacts facts, MailRecipient recipient)
    {
        var content = document.Content;
        Money Of(long minor) => new(minor, Currency.Of(content.Currency));
        string Line(LocalDate on, string text, long minor) => CleanText.Line($"{Day.Format(on)}: {text}, {Of(minor)}");
        return new DocumentLetterFacts
        {
            Greeting = CleanText.Line(recipient.Name),
            Practice = CleanText.Line(facts.Practice.Name),
            Number = document.Name,
            Total = Of(document.TotalMinor).ToString(),
            FirstDay = content.FirstDay is { } first ? Day.Format(first) : "",
            LastDay = Day.Format(content.LastDay),
            Method = content.Method is { } method ? EntryWords.Of(method) : "",
            Balance = Balance(Of(document.TotalMinor)),
            Lines = [.. content.OpeningMinor is { } opening ? [Line(content.FirstDay!.Value, "balance before", opening)] : Array.Empty<string>(), .. content.Lines.Select(l => Line(l.On, l.Text, l.AmountMinor))],
            Taxes = [.. content.Taxes.Select(t => $"{new TaxRate(t.BasisPoints)}: {Of(t.TaxMinor)} on {Of(t.NetMinor)}")],
            From = [.. content.From.Append(content.TaxNumber.Length > 0 ? $"Tax number {content.TaxNumber}" : "").Where(line => line.Length > 0).Select(CleanText.Line)],
        };
    }

    private static string Balance(Money total) => total.MinorUnits switch
    {
        0 => "At its end nothing is owed.",
        > 0 => $"At its end {total} is to be paid.",
        _ => $"At its end {-total} stands on account.",
    };

    private Task<LedgerDocument> Document(Message message, CancellationToken stop)
    {
        var id = DocumentId.From(message.SubjectId!.Value);
        return db.LedgerDocuments.AsNoTracking().SingleAsync(d => d.Id == id, stop);
    }

    private async Task<Payer> Payer(Message message, CancellationToken stop)
    {
        var id = (await Document(message, stop)).PayerId;
        return await db.Payers.AsNoTracking().SingleAsync(p => p.Id == id, stop);
    }
}
