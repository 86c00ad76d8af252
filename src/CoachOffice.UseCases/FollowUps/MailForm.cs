using MimeKit;
using MimeKit.Text;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Puts a letter into its envelope: the headers that say it is automatic mail, how to stop it, and which message it follows.</summary>
public static class MailForm
{
    /// <summary>The message as it is handed over; the same row gives the same Message-ID at every attempt.</summary>
    public static MimeMessage Of(Letter letter, Envelope envelope, CalendarPart? calendar = null)
    {
        ArgumentNullException.ThrowIfNull(letter);
        ArgumentNullException.ThrowIfNull(envelope);
        var mail = new MimeMessage { Subject = CleanText.Line(letter.Subject), MessageId = envelope.MessageId, Date = envelope.Date };
        mail.From.Add(new MailboxAddress(CleanText.Line(envelope.FromName), envelope.FromAddress));
        mail.To.Add(new MailboxAddress(CleanText.Line(envelope.ToName), envelope.ToAddress));
        Mark(mail, envelope);
        var body = new MultipartAlternative { Part(TextFormat.Plain, letter.Text), Part(TextFormat.Html, letter.Html) };
        if (calendar is not null) body.Add(Part(calendar));
        mail.Body = body;
        return mail;
    }

    // RFC 6047 2.4: the part's method says the object's own.
    private static TextPart Part(CalendarPart calendar)
    {
        var part = new TextPart("calendar") { Text = calendar.Text, ContentTransferEncoding = ContentEncoding.QuotedPrintable };
        part.ContentType.Charset = "utf-8";
        part.ContentType.Parameters.Add("method", calendar.Method);
        return part;
    }

    private static void Mark(MimeMessage mail, Envelope envelope)
    {
        mail.Headers.Add("Auto-Submitted", "auto-generated");
        mail.Headers.Add("X-Auto-Response-Suppress", "All");
        if (envelope.StopLink is { } stop) OfferStop(mail, stop);
        if (envelope.Follows is not { } first) return;
        mail.InReplyTo = first;
        mail.References.Add(first);
    }

    private static void OfferStop(MimeMessage mail, Uri stop)
    {
        mail.Headers.Add(HeaderId.ListUnsubscribe, $"<{stop}>");

        // One-click needs an https address (RFC 8058); on a machine of one's own the page behind the link has a button.
        if (stop.Scheme == Uri.UriSchemeHttps) mail.Headers.Add("List-Unsubscribe-Post", "List-Unsubscribe=One-Click");
    }

    private static TextPart Part(TextFormat format, string text)
    {
        var part = new TextPart(format) { Text = text };
        part.ContentTransferEncoding = ContentEncoding.QuotedPrintable;
        return part;
    }
}
