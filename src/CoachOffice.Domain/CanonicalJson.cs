using System.Buffers;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace CoachOffice.Domain;

/// <summary>JSON with one form for one meaning (RFC 8785: names in UTF-16 order, no white space, numbers as ECMAScript writes them), so that it can be hashed.</summary>
public static class CanonicalJson
{
    /// <summary>Letters that do not stand for themselves in a text.</summary>
    internal static readonly SearchValues<char> Special = SearchValues.Create(['"', '\\', .. Enumerable.Range(0, ' ').Select(c => (char)c)]);

    /// <summary>The canonical UTF-8 bytes; numbers are taken as IEEE 754 doubles. Throws <see cref="ArgumentException"/> for NaN, infinities and lone surrogates.</summary>
    public static byte[] Write(JsonNode? node)
    {
        var text = new StringBuilder();
        Append(text, node);
        return new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true).GetBytes(text.ToString());
    }

    /// <summary>SHA-256 of the canonical bytes, lower-case hexadecimal.</summary>
    public static string Sha256(JsonNode? node) => Convert.ToHexStringLower(SHA256.HashData(Write(node)));

    private static void Append(StringBuilder text, JsonNode? node)
    {
        switch (node)
        {
            case null: text.Append("null"); break;
            case JsonObject map: AppendMap(text, map); break;
            case JsonArray list: AppendList(text, list); break;
            default: AppendSingle(text, node.AsValue()); break;
        }
    }

    private static void AppendMap(StringBuilder text, JsonObject map)
    {
        text.Append('{');
        var first = true;
        foreach (var (name, value) in map.OrderBy(pair => pair.Key, StringComparer.Ordinal))
        {
            if (!first) text.Append(',');
            first = false;
            AppendText(text, name);
            text.Append(':');
            Append(text, value);
        }

        text.Append('}');
    }

    private static void AppendList(StringBuilder text, JsonArray list)
    {
        text.Append('[');
        for (var i = 0; i < list.Count; i++)
        {
            if (i > 0) text.Append(',');
            Append(text, list[i]);
        }

        text.Append(']');
    }

    private static void AppendSingle(StringBuilder text, JsonValue value)
    {
        switch (value.GetValueKind())
        {
            case JsonValueKind.String: AppendText(text, value.GetValue<string>()); break;
            case JsonValueKind.True: text.Append("true"); break;
            case JsonValueKind.False: text.Append("false"); break;
            default: text.Append(ShortestNumber.Of(AsDouble(value))); break;
        }
    }

    private static double AsDouble(JsonValue value)
    {
        if (value.TryGetValue<double>(out var number)) return number;
        return value.TryGetValue<int>(out var whole) ? whole : double.Parse(value.ToJsonString(), CultureInfo.InvariantCulture);
    }

    private static void AppendText(StringBuilder text, string value)
    {
        text.Append('"');
        if (!value.AsSpan().ContainsAny(Special)) text.Append(value);
        else foreach (var letter in value) text.Append(InText(letter));

        text.Append('"');
    }

    /// <summary>A letter as it is written in a text.</summary>
    internal static string InText(char letter) => letter switch
    {
        '"' => "\\\"",
        '\\' => @"\\",
        '\b' => "\\b",
        '\t' => "\\t",
        '\n' => "\\n",
        '\f' => "\\f",
        '\r' => "\\r",
        < ' ' => string.Create(CultureInfo.InvariantCulture, $"\\u{(int)letter:x4}"),
        _ => letter.ToString(),
    };
}
