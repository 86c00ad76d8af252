using System.Text;
using CoachOffice.Data.Access;
using QRCoder;

namespace CoachOffice.Web.Features.Access;

/// <summary>What an authenticator app reads: RFC 6238 with its usual 30 s and six digits, as a picture and as text.</summary>
/// <param name="Key">The shared key, base 32 in groups of four.</param>
/// <param name="Picture">A QR code as a data address of an SVG.</param>
public sealed record TotpSetUp(string Key, string Picture)
{
    public const int Digits = 6;
    private const int Group = 4;

    public static TotpSetUp For(Account account, string key)
    {
        ArgumentNullException.ThrowIfNull(account);
        var label = Uri.EscapeDataString($"CoachOffice:{account.Email}");
        var address = $"otpauth://totp/{label}?secret={key}&issuer=CoachOffice&digits={Digits}";
        using var data = QRCodeGenerator.GenerateQrCode(address, QRCodeGenerator.ECCLevel.M);
        using var svg = new SvgQRCode(data);
        var picture = Convert.ToBase64String(Encoding.UTF8.GetBytes(svg.GetGraphic(4)));
        return new TotpSetUp(string.Join(' ', key.Chunk(Group).Select(c => new string(c))), "data:image/svg+xml;base64," + picture);
    }
}
