namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>A file read once from beginning to end.</summary>
internal sealed class FileReading(string path, FileLayout layout, RowReader reader)
{
    private long _at;
    private long _length = 1;

    /// <summary>The columns that are read.</summary>
    public IReadOnlyList<RowMeasure> Columns => reader.Columns;

    /// <summary>How much of it was read: 0 to 100.</summary>
    public int Percent => (int)(100 * Interlocked.Read(ref _at) / Interlocked.Read(ref _length));

    /// <summary>Its rows below the names, each with its line.</summary>
    public IEnumerable<(int Line, ReadRow Row)> Rows()
    {
        using var text = FileText.Open(path) ?? throw new FileNotFoundException("The file is no longer there.");
        Interlocked.Exchange(ref _length, Math.Max(1, text.BaseStream.Length));
        using var cells = new CsvCells(text, layout.Delimiter, SheetKind.Swings);
        for (var i = 0; i < layout.HeadRows; i++) cells.Next();
        while (cells.Next())
        {
            Interlocked.Exchange(ref _at, text.BaseStream.Position);
            yield return (cells.Line, reader.Read(cells));
        }
    }
}
