using CsvHelper;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>The rows of a file, one at a time, by RFC 4180; line breaks within quotes only where the kind of list has them.</summary>
internal sealed class CsvCells : IDisposable
{
    private const int LargestRow = 1 << 20;

    private readonly CsvReader _reader;
    private bool _isBad;

    public CsvCells(TextReader text, char delimiter, SheetKind kind)
    {
        var form = new CsvReaderOptions
        {
            Separator = delimiter,
            HasHeader = false,
            TrimWhitespace = true,
            TrimInsideQuotes = true,
            AllowLineBreaksInQuotes = kind.HasLineBreaks,
            TrackLineNumbers = true,
            MaxRecordSize = LargestRow,
            IncludeValuesInExceptions = false,
            OnMalformedRecord = _ => _isBad = true,
        };
        _reader = CsvReader.Create(text, form, leaveOpen: true);
    }

    /// <summary>How many cells the row has.</summary>
    public int Count => _reader.FieldCount;

    /// <summary>The row's line in the file, from 1.</summary>
    public int Line => (int)_reader.LineNumber;

    /// <summary>True when a quote stands where none may, or is never closed.</summary>
    public bool IsBad => _isBad;

    /// <summary>A cell without white space around it.</summary>
    public string this[int column] => _reader.GetString(column);

    /// <summary>Goes on to the next row that is not blank; false at the end.</summary>
    public bool Next()
    {
        do
        {
            _isBad = false;
            if (!_reader.Read()) return false;
        }
        while (IsBlank());
        return true;
    }

    public void Dispose() => _reader.Dispose();

    // A sheet saved as CSV often ends in rows of separators alone.
    private bool IsBlank()
    {
        for (var i = 0; i < _reader.FieldCount; i++) if (!_reader.IsEmpty(i)) return false;
        return true;
    }
}
