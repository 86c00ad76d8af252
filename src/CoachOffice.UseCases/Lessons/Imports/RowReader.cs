using System.Globalization;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using NodaTime;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>From a row of cells to a swing in our units and signs, or to one sentence why not.</summary>
internal sealed class RowReader
{
    private readonly FileLayout _layout;
    private readonly FileAnswers _answers;
    private readonly LocalDate _today;
    private readonly Dictionary<string, Club?> _clubs;
    private readonly SwingCheck _check;

    public RowReader(FileLayout layout, FileAnswers answers, Book book, Hand hand, LocalDate today)
    {
        (_layout, _answers, _today) = (layout, answers, today);
        Columns = [.. answers.Mapping.Columns.Where(c => book.Find(c.Measure) is not null).Select(c => RowMeasure.Of(c, book.Find(c.Measure)!, hand))];
        _clubs = answers.Mapping.ClubWords.ToDictionary(w => w.Word, w => w.Club, StringComparer.OrdinalIgnoreCase);
        _check = new SwingCheck(Columns, book);
    }

    /// <summary>The columns that are read, in the order of a row's values.</summary>
    public IReadOnlyList<RowMeasure> Columns { get; }

    /// <summary>Reads the row the cells stand at.</summary>
    public ReadRow Read(CsvCells cells)
    {
        var line = cells.Line;
        if (cells.IsBad) return ReadRow.No(line, "quotes", "A quote stands where none may, or is never closed.");
        if (cells.Count != _layout.Columns.Count && !EndsEmpty(cells))
            return ReadRow.No(line, "ragged", $"The row has {cells.Count} cells under {_layout.Columns.Count} names{(cells.Count > _layout.Columns.Count ? "; does a comma inside a number set it apart?" : ".")}");
        if (Day(cells) is not { } day) return ReadRow.No(line, "day", $"'{Short(cells[_answers.Mapping.DayColumn!.Value])}' is no day; it should look like 2026-05-04, 04.05.2026 or 04/05/2026.");
        if (HeadingCheck.Of(new LessonHeading(day, Club.Driver), _today) is not null)
            return ReadRow.No(line, "day-far", string.Create(CultureInfo.InvariantCulture, $"The day, {day:uuuu-MM-dd}, lies after today or more than 20 years back."));
        if (!IsClub(cells, out var club)) return NoClub(line, cells[_answers.Mapping.ClubColumn!.Value]);
        return Swing(cells, day, club!.Value);
    }

    private ReadRow Swing(CsvCells cells, LocalDate day, Club club)
    {
        var values = new double?[Columns.Count];
        var any = false;
        for (var i = 0; i < values.Length; i++)
        {
            var cell = cells[Columns[i].Column];
            if (NumberCell.IsBlank(cell)) continue;
            if (Value(cell, Columns[i], out var value) is { } wrong) return ReadRow.No(cells.Line, wrong.Code, wrong.Sentence);
            (values[i], any) = (value, true);
        }

        if (!any) return ReadRow.No(cells.Line, "nothing", "Nothing was measured in this row.");
        if (_check.Refuses(values) is { } why) return ReadRow.No(cells.Line, "outside-limits", why);
        var doubt = _check.Doubts(values) is { } odd ? new NotedRow(cells.Line, odd.Code, odd.Sentence) : null;
        return new ReadRow { Day = day, Club = club, Values = values, Doubt = doubt };
    }

    private (string Code, string Sentence)? Value(string cell, RowMeasure column, out double value)
    {
        value = 0;
        var mark = _answers.Mapping.Decimals ?? DecimalMark.Point;
        if (!NumberCell.TryRead(cell, mark, out var number))
            return ("not-a-number", $"{column.Measure.Name}: '{Short(cell)}' is no number with a decimal {(mark == DecimalMark.Point ? "point" : "comma")}.");
        value = column.Ours(number);
        if (column.Measure.Plausible.Contains(value)) return null;
        return ("outside-limits", Outside(number, value, column));
    }

    private static string Outside(double number, double value, RowMeasure column)
    {
        var typed = string.Create(CultureInfo.InvariantCulture, $"{number} {column.Unit}");
        var ours = column.Unit == column.Measure.Unit && !column.Flips ? "" : string.Create(CultureInfo.InvariantCulture, $", which is {Math.Round(value, 1)} {column.Measure.Unit}");
        var (low, high) = (column.Measure.Plausible.Low, column.Measure.Plausible.High);
        return string.Create(CultureInfo.InvariantCulture, $"{column.Measure.Name}: {typed}{ours}, is outside what can be, {low} to {high} {column.Measure.Unit}.");
    }

    private LocalDate? Day(CsvCells cells) =>
        _answers.Mapping.DayColumn is { } column ? DayCell.Read(cells[column], _answers.Mapping.DayOrder) : _answers.Day;

    private bool IsClub(CsvCells cells, out Club? club)
    {
        club = _answers.Mapping.ClubColumn is { } column ? _clubs.GetValueOrDefault(ColumnFacts.WordOf(cells[column])) : _answers.Club;
        return club is not null;
    }

    private static ReadRow NoClub(int line, string word) =>
        ReadRow.No(line, "club", word.Length == 0 ? "The row names no club." : $"Swings with '{Short(word)}' are left out.");

    // Some sheets end every row, but not the names, with a separator.
    private bool EndsEmpty(CsvCells cells)
    {
        if (cells.Count < _layout.Columns.Count) return false;
        for (var i = _layout.Columns.Count; i < cells.Count; i++) if (cells[i].Length > 0) return false;
        return true;
    }

    private static string Short(string cell) => cell.Length <= 24 ? cell : cell[..24] + "...";
}
