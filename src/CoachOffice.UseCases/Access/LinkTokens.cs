using System.Buffers.Text;
using System.Security.Cryptography;

namespace CoachOffice.UseCases.Access;

/// <summary>Secrets in addresses: 256 random bits as base64url. Only their SHA-256 is ever kept.</summary>
internal static class LinkTokens
{
    private const int Bytes = 32;
    private const int Letters = 43;

    /// <summary>A new one, and what is kept of it.</summary>
    public static (string Token, string Sha256) New()
    {
        var bytes = RandomNumberGenerator.GetBytes(Bytes);
        return (Base64Url.EncodeToString(bytes), HashOf(bytes));
    }

    /// <summary>What would be kept of a token; null when it is none.</summary>
    public static string? HashOf(string? token)
    {
        var bytes = new byte[Bytes];
        return token is { Length: Letters } && Base64Url.IsValid(token) && Base64Url.TryDecodeFromChars(token, bytes, out var written) && written == Bytes ? HashOf(bytes) : null;
    }

    private static string HashOf(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));
}
