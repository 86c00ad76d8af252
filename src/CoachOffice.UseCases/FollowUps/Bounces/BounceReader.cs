using System.Text.RegularExpressions;
using MimeKit;

namespace CoachOffice.UseCases.FollowUps.Bounces;

/// <summary>Reads a delivery status notification (RFC 3464): the machine's part for each recipient, and the returned mail or its headers for whose it was. Pure.</summary>
public static partial class BounceReader
{
    private const int LongestId = 250;
    private const int LongestAddress = 254;

    /// <summary>Nothing when it is no such notice, says only that mail arrived, or does not name the mail that came back.</summary>
    public static IReadOnlyList<BounceNotice> Read(MimeMessage mail)
    {
        ArgumentNullException.ThrowIfNull(mail);
        var parts = mail.Body is null ? [] : Parts(mail.Body).ToList();
        if (parts.OfType<MessageDeliveryStatus>().FirstOrDefault() is not { } report || Returned(parts) is not { } returned) return [];
        if (returned[HeaderId.MessageId] is not { } header || Id(header) is not { } id) return [];

        // The first group speaks of the whole message, each further one of a recipient. A server on the way may have sent it on elsewhere: it is the address we wrote to that counts.
        var groups = report.StatusGroups.Skip(1).ToList();
        var sentTo = groups.Count == 1 ? Mailbox(returned[HeaderId.To]) : null;
        return [.. groups.Select(group => Of(group, id, sentTo)).OfType<BounceNotice>()];
    }

    /// <summary>A status code, when it is one of a failure or a delay: <c>5.1.1</c>.</summary>
    public static string? Status(string? text) => text is not null && Code().Match(text) is { Success: true } found ? found.Value.Trim() : null;

    /// <summary>A Message-ID without angle brackets.</summary>
    public static string? Id(string? text)
    {
        var id = text?.Trim().TrimStart('<').TrimEnd('>') ?? "";
        return id.Length is > 0 and <= LongestId && id.Contains('@', StringComparison.Ordinal) ? id : null;
    }

    private static BounceNotice? Of(HeaderList group, string id, string? sentTo)
    {
        if (Status(group["Status"]) is not { } status) return null;
        if (group["Action"]?.Trim().ToUpperInvariant() is not ("FAILED" or "DELAYED")) return null;
        var address = sentTo ?? Typed(group["Original-Recipient"]) ?? Typed(group["Final-Recipient"]);
        return address is { Length: > 0 and <= LongestAddress } ? new BounceNotice(id, address, status) : null;
    }

    private static HeaderList? Returned(List<MimeEntity> parts) =>
        parts.OfType<TextRfc822Headers>().FirstOrDefault()?.Message?.Headers ?? parts.OfType<MessagePart>().FirstOrDefault()?.Message?.Headers;

    // Parts of the notice itself; what a returned mail holds in its turn is not asked.
    private static IEnumerable<MimeEntity> Parts(MimeEntity entity) => entity is Multipart several ? several.SelectMany(Parts) : [entity];

    // "rfc822; name@example.org"
    private static string? Typed(string? text)
    {
        var cut = text?.IndexOf(';', StringComparison.Ordinal) ?? -1;
        return cut < 0 ? null : Mailbox(text![(cut + 1)..]);
    }

    private static string? Mailbox(string? text) =>
        text is not null && InternetAddressList.TryParse(text, out var list) && list.Mailboxes.FirstOrDefault() is { } box ? box.Address : null;

    [GeneratedRegex(@"^\s*[45]\.\d{1,3}\.\d{1,3}(?=\s|$|\()", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Code();
}
