namespace CoachOffice.Drafting.Reading.Nodes;

/// <summary>Turns rising byte offsets of a UTF-8 text into lines and columns in one pass.</summary>
internal sealed class TextCursor(string file, ReadOnlyMemory<byte> text)
{
    private int _offset;
    private int _line = 1;
    private int _column = 1;

    /// <summary>The place of an offset that is not before the last one asked for.</summary>
    public Position At(long offset)
    {
        var bytes = text.Span;
        for (var end = Math.Min(offset, bytes.Length); _offset < end; _offset++)
        {
            if (bytes[_offset] == '\n') (_line, _column) = (_line + 1, 1);
            else if ((bytes[_offset] & 0xC0) != 0x80) _column++;
        }

        return new Position(file, _line, _column);
    }
}
