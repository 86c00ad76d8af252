using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.FollowUps;
using Microsoft.EntityFrameworkCore;
using MimeKit;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.UseCases.Ledger.Reports;

/// <summary>Says politely what is still open, once for each oldest line. It goes to who pays, never to a minor, and is never repeated by guess.</summary>
public sealed class PaymentLetter(OfficeDb db, ReadOverdue overdue, LedgerBook book, Letters letters) : IOfficeLetter
{
    // A letter is read, not studied: the rest is on the statement.
    private const int MostLines = 10;

    private static readonly LocalDatePattern Day = LocalDatePattern.CreateWithInvariantCulture("d MMMM uuuu");

    /// <inheritdoc/>
    public IReadOnlyList<MessageKind> Kinds { get; } = [MessageKind.PaymentDue];

    /// <inheritdoc/>
    public bool MayRepeat => false;

    /// <inheritdoc/>
    public async Task<SendingVerdict> MayGo(OfficeFacts facts, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var payer = await Payer(facts.Message, stop);
        if (payer.ErasedAt is not null) return new SendingVerdict.Never("payer-erased");
        if (await overdue.Of(payer.Id, stop) is not { } open || open.PayBy > facts.Today || !facts.Message.OnceKey.EndsWith($"|{Occasion(open)}", StringComparison.Ordinal)) return new SendingVerdict.Never("paid");
        return new SendingVerdict.Go();
    }

    /// <inheritdoc/>
    public async Task<MailRecipient?> Recipient(OfficeFacts facts, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var payer = await Payer(facts.Message, stop);
        if (payer.Email.Length == 0) return null;

        // A minor who has an account of their own is never asked for money: their guardian is.
        var students = await db.Students.AsNoTracking().Where(s => s.PayerId == payer.Id && s.ErasedAt == null).ToListAsync(stop);
        var own = students.FirstOrDefault(s => string.Equals(s.Email, payer.Email, StringComparison.OrdinalIgnoreCase) && s.BirthDate is { } born && Ages.IsMinor(born, facts.Today));
        return own is null ? new MailRecipient(payer.Name, payer.Email, false) : own.RecipientOn(facts.Today);
    }

    /// <inheritdoc/>
    public async Task<MimeMessage> Write(OfficeFacts facts, MailRecipient recipient, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(recipient);
        var open = await overdue.Of((await Payer(facts.Message, stop)).Id, stop) ?? throw new InvalidOperationException("It was paid between two looks.");
        var said = new PaymentLetterFacts
        {
            Greeting = CleanText.Line(recipient.Name),
            Practice = CleanText.Line(facts.Practice.Name),
            Amount = open.Amount.ToString(),
            Since = Day.Format(open.PayBy),
            Lines = [.. open.Lines.Take(MostLines).Select(l => CleanText.Line($"{Day.Format(l.On)}: {l.Text}, {l.Open}")), .. More(open)],
            From = await From(facts, stop),
        };
        return MailForm.Of(letters.Render(facts.Message.Kind, said, facts.Words), OfficeEnvelopes.For(facts, recipient));
    }

    /// <inheritdoc/>
    public async Task<string> Addressee(Message message, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(message);
        return (await Payer(message, stop)).Name;
    }

    /// <summary>What makes one letter different from the next: the oldest line that is open.</summary>
    internal static string Occasion(OverdueView open) => LocalDatePattern.Iso.Format(open.OldestOn);

    private static IEnumerable<string> More(OverdueView open) => open.Lines.Count > MostLines ? [$"and {open.Lines.Count - MostLines} more"] : [];

    private async Task<IReadOnlyList<string>> From(OfficeFacts facts, CancellationToken stop)
    {
        var terms = await book.Terms(stop);
        var name = terms.LegalName.Length > 0 ? terms.LegalName : facts.Practice.Name;
        return [.. terms.PostalAddress.Split('\n').Prepend(name).Where(line => line.Length > 0).Select(CleanText.Line)];
    }

    private Task<Payer> Payer(Message message, CancellationToken stop)
    {
        var id = PayerId.From(message.SubjectId!.Value);
        return db.Payers.AsNoTracking().SingleAsync(p => p.Id == id, stop);
    }
}
