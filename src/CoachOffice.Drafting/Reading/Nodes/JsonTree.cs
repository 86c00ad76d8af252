using System.Text;
using System.Text.Json;

namespace CoachOffice.Drafting.Reading.Nodes;

/// <summary>Reads strict JSON (no comments, no trailing commas, no NaN) into positioned nodes.</summary>
internal sealed class JsonTree
{
    private const int Deepest = 32;
    private readonly string _file;
    private readonly FaultList _faults;
    private readonly TextCursor _cursor;

    private JsonTree(string file, ReadOnlyMemory<byte> text, FaultList faults)
    {
        _file = file;
        _faults = faults;
        _cursor = new TextCursor(file, text);
    }

    /// <summary>The file's value, or null with a fault when it is no JSON.</summary>
    public static Node? Read(string file, ReadOnlyMemory<byte> bytes, FaultList faults)
    {
        if (FileText.Check(file, bytes, faults) is not { } text) return null;
        if (!text.Span.ContainsAnyExcept(" \t\r\n"u8))
        {
            faults.Add(new Position(file, 1, 1), Fault.WholeFile, "the file is empty; write one JSON object");
            return null;
        }

        return new JsonTree(file, text, faults).Document(text);
    }

    private Node? Document(ReadOnlyMemory<byte> text)
    {
        var reader = new Utf8JsonReader(text.Span, new JsonReaderOptions { MaxDepth = Deepest });
        try
        {
            reader.Read();
            var node = Value(ref reader, Fault.WholeFile);
            reader.Read();
            return node;
        }
        catch (JsonException refused)
        {
            var (line, bytes) = ((int)(refused.LineNumber ?? 0), (int)(refused.BytePositionInLine ?? 0));
            _faults.Add(new Position(_file, line + 1, Column(text.Span, line, bytes)), Fault.WholeFile, $"this is not JSON: {Reason(refused.Message)}");
            return null;
        }
    }

    private Node Value(ref Utf8JsonReader reader, string path) => reader.TokenType switch
    {
        JsonTokenType.StartObject => Map(ref reader, path),
        JsonTokenType.StartArray => List(ref reader, path),
        JsonTokenType.String => new ScalarNode(Here(ref reader), path, ScalarKind.Text, Text(ref reader, path)) { Lead = 1 },
        JsonTokenType.Number => new ScalarNode(Here(ref reader), path, ScalarKind.Number, Encoding.ASCII.GetString(reader.ValueSpan)),
        JsonTokenType.True => new ScalarNode(Here(ref reader), path, ScalarKind.Flag, "true"),
        JsonTokenType.False => new ScalarNode(Here(ref reader), path, ScalarKind.Flag, "false"),
        _ => new ScalarNode(Here(ref reader), path, ScalarKind.Nothing, "null"),
    };

    private MapNode Map(ref Utf8JsonReader reader, string path)
    {
        var map = new MapNode(Here(ref reader), path);
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            var at = Here(ref reader);
            var name = Text(ref reader, path);
            reader.Read();
            map.Add(new MapEntry(name, at, Value(ref reader, Node.Inside(path, Words.Clip(name)))), _faults);
        }

        return map;
    }

    private ListNode List(ref Utf8JsonReader reader, string path)
    {
        var at = Here(ref reader);
        var items = new List<Node>();
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray) items.Add(Value(ref reader, Node.Inside(path, items.Count)));
        return new ListNode(at, path, items);
    }

    private string Text(ref Utf8JsonReader reader, string path)
    {
        try
        {
            return reader.GetString() ?? "";
        }
        catch (InvalidOperationException)
        {
            _faults.Add(Here(ref reader), path, "this text holds half a character (a lone surrogate); write the whole character");
            return "?";
        }
    }

    private Position Here(ref Utf8JsonReader reader) => _cursor.At(reader.TokenStartIndex);

    private static int Column(ReadOnlySpan<byte> text, int line, int bytes)
    {
        for (; line > 0; line--) text = text[(text.IndexOf((byte)'\n') + 1)..];
        var before = text[..Math.Min(bytes, text.Length)];
        var column = 1;
        foreach (var b in before) column += (b & 0xC0) == 0x80 ? 0 : 1;
        return column;
    }

    // The library's reasons end in advice for programmers; a person needs only what stands there.
    private static string Reason(string message)
    {
        var end = message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        return (end < 0 ? message : message[..end]).TrimEnd('.')
            .Replace(" which is not supported in this mode. Change the reader options", "; JSON has none", StringComparison.Ordinal);
    }
}
