using System.Buffers.Binary;
using System.Globalization;
using System.Security.Cryptography;

namespace CoachOffice.Web.Tests.Access;

/// <summary>What an authenticator app computes: RFC 6238 with HMAC-SHA-1 and steps of 30 s.</summary>
internal static class TotpCode
{
    private const string Base32 = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";

    public static string Of(byte[] key, long seconds, int digits)
    {
        var counter = new byte[8];
        BinaryPrimitives.WriteInt64BigEndian(counter, seconds / 30);
#pragma warning disable CA5350 // The algorithm authenticator apps use.
        var hash = HMACSHA1.HashData(key, counter);
#pragma warning restore CA5350
        var offset = hash[^1] & 0xf;
        var number = BinaryPrimitives.ReadInt32BigEndian(hash.AsSpan(offset)) & 0x7fffffff;
        return (number % (int)Math.Pow(10, digits)).ToString(CultureInfo.InvariantCulture).PadLeft(digits, '0');
    }

    public static byte[] Key(string base32)
    {
        var bits = string.Concat(base32.Where(c => c != ' ').Select(c => Convert.ToString(Base32.IndexOf(c, StringComparison.Ordinal), 2).PadLeft(5, '0')));
        return [.. Enumerable.Range(0, bits.Length / 8).Select(i => Convert.ToByte(bits.Substring(i * 8, 8), 2))];
    }
}
