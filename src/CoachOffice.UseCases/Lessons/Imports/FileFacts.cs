using CoachOffice.Domain;
using CsvHelper;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>A whole file looked through once, before anything is read from it.</summary>
internal sealed class FileFacts
{
    private readonly SheetKind _kind;

    private FileFacts(FileLayout layout, SheetKind kind)
    {
        (Layout, _kind) = (layout, kind);
        Columns = [.. layout.Columns.Select(_ => new ColumnFacts())];
    }

    public FileLayout Layout { get; }

    /// <summary>By the column's index.</summary>
    public IReadOnlyList<ColumnFacts> Columns { get; }

    public int Rows { get; private set; }

    /// <summary>What is in the file, or why it cannot be read.</summary>
    public static Outcome<FileFacts> Of(string path, SheetKind kind)
    {
        try
        {
            var read = LayoutReader.Of(path, kind);
            return read.TryGet(out var layout) ? new FileFacts(layout, kind).Look(path) : Outcome<FileFacts>.Refused(read.Refusals);
        }
        catch (CsvFormatException)
        {
            return new Refusal("file-long-row", $"A row of the file goes on for more than a million characters; that is no list of {kind.Row}s.", "file");
        }
    }

    private Outcome<FileFacts> Look(string path)
    {
        using var text = FileText.Open(path)!;
        using var cells = new CsvCells(text, Layout.Delimiter, _kind);
        for (var i = 0; i < Layout.HeadRows; i++) cells.Next();
        while (cells.Next())
        {
            if (++Rows > _kind.MostRows) return new Refusal("file-too-long", $"The file has more than {_kind.MostRows:N0} rows. Split it and bring the parts.", "file");
            for (var i = 0; i < Math.Min(cells.Count, Layout.Columns.Count); i++) Columns[i].Look(cells[i]);
        }

        return Rows > 0 ? this : new Refusal("file-no-rows", $"The file names its columns and holds no {_kind.Row} below them.", "file");
    }
}
