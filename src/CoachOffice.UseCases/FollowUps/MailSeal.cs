using MimeKit;
using MimeKit.Cryptography;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Signs mail (DKIM, RFC 6376). The headers by which somebody stops it are covered, as one-click needs (RFC 8058 section 4).</summary>
internal sealed class MailSeal(DkimSettings settings)
{
    private static readonly HeaderId[] Covered =
    [
        HeaderId.From, HeaderId.To, HeaderId.Subject, HeaderId.Date, HeaderId.MessageId, HeaderId.InReplyTo, HeaderId.References,
        HeaderId.MimeVersion, HeaderId.ContentType, HeaderId.AutoSubmitted, HeaderId.ListUnsubscribe, HeaderId.ListUnsubscribePost,
    ];

    private readonly Lazy<DkimSigner> _signer = new(() => new DkimSigner(settings.KeyFile, settings.Domain, settings.Selector)
    {
        HeaderCanonicalizationAlgorithm = DkimCanonicalizationAlgorithm.Relaxed,
        BodyCanonicalizationAlgorithm = DkimCanonicalizationAlgorithm.Relaxed,
    });

    /// <summary>True when there is a key.</summary>
    public bool IsThere => settings.KeyFile.Length > 0;

    /// <summary>Signs it; from here on nothing of it may change, so it is made ready for any server before.</summary>
    public void Put(MimeMessage mail)
    {
        mail.Prepare(EncodingConstraint.SevenBit);
        _signer.Value.Sign(mail, [.. Covered.Where(mail.Headers.Contains)]);
    }
}
