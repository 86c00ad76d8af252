using System.Buffers;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace CoachOffice.Domain;

/// <summary>Writes the form of <see cref="CanonicalJson"/> straight away, without a tree. Names must come in ordinal order within each object: another order throws <see cref="InvalidOperationException"/>.</summary>
public sealed class CanonicalWriter
{
    private const int Usual = 4096;

    /// <summary>Bytes of the longest number .NET writes.</summary>
    private const int LongestNumber = 32;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    private readonly ArrayBufferWriter<byte> _bytes = new(Usual);
    private readonly Stack<string?> _names = new();
    private bool _follows;

    /// <summary>The bytes so far.</summary>
    public ReadOnlySpan<byte> Written => _bytes.WrittenSpan;

    /// <summary>SHA-256 of the bytes so far, lower-case hexadecimal.</summary>
    public string Sha256()
    {
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(Written, hash);
        return Convert.ToHexStringLower(hash);
    }

    /// <summary>Begins an object.</summary>
    public void BeginMap()
    {
        Separate();
        Raw("{");
        _names.Push(null);
        _follows = false;
    }

    /// <summary>Ends an object.</summary>
    public void EndMap()
    {
        _names.Pop();
        Raw("}");
        _follows = true;
    }

    /// <summary>Begins a list.</summary>
    public void BeginList()
    {
        Separate();
        Raw("[");
        _follows = false;
    }

    /// <summary>Ends a list.</summary>
    public void EndList()
    {
        Raw("]");
        _follows = true;
    }

    /// <summary>The name of the next value.</summary>
    public void Name(string name)
    {
        if (string.CompareOrdinal(_names.Pop(), name) >= 0) throw new InvalidOperationException($"The name '{name}' comes too late.");
        _names.Push(name);
        Text(name);
        Raw(":");
        _follows = false;
    }

    /// <summary>A text; throws <see cref="ArgumentException"/> for lone surrogates.</summary>
    public void Text(string value)
    {
        ArgumentNullException.ThrowIfNull(value);
        Separate();
        Raw("\"");
        Raw(value.AsSpan().ContainsAny(CanonicalJson.Special) ? string.Concat(value.Select(CanonicalJson.InText)) : value);
        Raw("\"");
    }

    /// <summary>A number; throws <see cref="ArgumentException"/> for NaN and infinities.</summary>
    public void Number(double value)
    {
        Separate();
        var room = _bytes.GetSpan(LongestNumber);

        // As ShortestNumber says: the same as .NET writes where that has no exponent.
        if (value != 0 && double.IsFinite(value) && value.TryFormat(room, out var written, "R", CultureInfo.InvariantCulture) && !room[..written].Contains((byte)'E')) _bytes.Advance(written);
        else Raw(ShortestNumber.Of(value));
    }

    private void Separate()
    {
        if (_follows) Raw(",");
        _follows = true;
    }

    private void Raw(string text) => _bytes.Advance(Strict.GetBytes(text, _bytes.GetSpan(text.Length * 3)));
}
