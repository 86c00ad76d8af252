using CoachOffice.Domain;
using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.Domain.Measuring;
using NodaTime;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>From the form to answers a file can be read by; whatever is open is asked for, never guessed.</summary>
internal sealed class ColumnsCheck(FileFacts facts, Book book, LocalDate today)
{
    private readonly List<Refusal> _open = [];

    /// <summary>The answers, or everything that is still open or wrong, each with its field.</summary>
    /// <param name="form">What was said.</param>
    /// <param name="saidBefore">True when it was said of another file: numbers written both ways are asked about again.</param>
    public Outcome<FileAnswers> Of(ColumnsForm form, bool saidBefore = false)
    {
        _open.Clear();
        var said = form.Columns.Where(c => c.Measure.Length > 0 && c.Column >= 0 && c.Column < facts.Columns.Count).ToList();
        if (said.Count == 0) Ask("columns-none", "Say of at least one column what it holds.", null);
        foreach (var twice in said.GroupBy(c => c.Measure).SelectMany(g => g.Skip(1)))
            Ask("measure-twice", $"Two columns cannot both be {book.Find(MeasureId.From(twice.Measure))?.Name ?? twice.Measure}; leave one out.", $"measure[{twice.Column}]");
        var columns = said.Select(Column).OfType<MappedColumn>().ToList();
        var rest = new SurroundingsCheck(facts, today, _open);
        var mapping = new ColumnMapping
        {
            Columns = columns,
            Decimals = Decimals(said, form.Decimals, saidBefore),
            ClubColumn = Known(form.ClubColumn),
            ClubWords = Known(form.ClubColumn) is { } club ? rest.Clubs(club, form.Clubs) : [],
            DayColumn = Known(form.DayColumn),
            DayOrder = Known(form.DayColumn) is { } day ? rest.Order(day, form.DayOrder) : null,
        };
        var answers = new FileAnswers(mapping, mapping.DayColumn is null ? rest.Day(form.Day) : null, mapping.ClubColumn is null ? rest.Club(form.Club) : null);
        return _open.Count == 0 ? answers : Outcome<FileAnswers>.Refused([.. _open]);
    }

    private int? Known(int? column) => column >= 0 && column < facts.Columns.Count ? column : null;

    private MappedColumn? Column(ColumnChoice said)
    {
        var name = facts.Layout.Columns[said.Column].Name;
        if (DeviceMeasures.Of(book).FirstOrDefault(m => m.Id.Value == said.Measure) is not { } measure)
        {
            Ask("measure-not-known", $"Pick from the list what '{name}' holds.", $"measure[{said.Column}]");
            return null;
        }

        var (unit, plus) = (UnitOf(said, measure, name), PlusOf(said, measure, name));
        return unit is null || plus is null ? null : new MappedColumn(said.Column, measure.Id, unit.Symbol, plus.Value);
    }

    private Unit? UnitOf(ColumnChoice said, Measure measure, string name)
    {
        var units = DeviceMeasures.UnitsOf(measure);
        if (units.Count == 1) return units[0];
        var unit = units.FirstOrDefault(u => u.Symbol == said.Unit);
        if (unit is null) Ask("unit-missing", $"{measure.Name}: the file does not say in which unit '{name}' is. Pick {string.Join(", ", units.Select(u => u.Symbol))}.", $"unit[{said.Column}]");
        return unit;
    }

    private PlusMeans? PlusOf(ColumnChoice said, Measure measure, string name)
    {
        if (measure.Negative is null) return PlusMeans.Ours;
        if (Terms.TryParse<PlusMeans>(said.Plus, out var plus) && (plus is PlusMeans.Ours or PlusMeans.Opposite || DeviceMeasures.IsSideways(measure))) return plus;
        Ask("sign-missing", $"{measure.Name}: say what a positive number of '{name}' means, {measure.Positive} or {measure.Negative}.", $"plus[{said.Column}]");
        return null;
    }

    private DecimalMark? Decimals(List<ColumnChoice> said, string form, bool saidBefore)
    {
        var shown = ColumnGuess.Mark(facts, said.Select(c => c.Column));
        DecimalMark? known = Terms.TryParse<DecimalMark>(form, out var mark) ? mark : null;
        if (shown.Certain is { } certain)
        {
            if (known is not null && known != certain && shown.HasMarks)
                Ask("decimals-other", $"The numbers of this file have a decimal {(certain == DecimalMark.Comma ? "comma" : "point")}: say so, or every row would be refused or read wrong.", "decimals");
            return certain;
        }

        if (known is not null && !(saidBefore && shown.IsMixed)) return known;
        Ask("decimals-open", shown.IsMixed
            ? "Some numbers of this file have a decimal comma and some a decimal point. Say which is right: rows written the other way are then refused."
            : "The numbers of this file can be read two ways, as in 1,234. Say what stands before the decimals.", "decimals");
        return null;
    }

    private void Ask(string code, string sentence, string? field) => _open.Add(new Refusal(code, sentence, field));
}
