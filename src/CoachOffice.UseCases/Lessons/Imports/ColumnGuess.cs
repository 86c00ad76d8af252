using CoachOffice.Domain;
using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.Domain.Measuring;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>A first filling of the form, from plain words of the trade; the coach sees it before anything is read. What is not plain stays open.</summary>
internal sealed class ColumnGuess(FileFacts facts, Book book)
{
    private static readonly string[] ClubHeads = ["club", "club name", "club type"];
    private static readonly string[] DayHeads = ["day", "date", "date and time", "date time", "time"];

    private static readonly Dictionary<string, string> Words = new(StringComparer.Ordinal)
    {
        ["club head speed"] = "club-speed",
        ["clubhead speed"] = "club-speed",
        ["head speed"] = "club-speed",
        ["angle of attack"] = "attack-angle",
        ["path"] = "club-path",
        ["face to path angle"] = "face-to-path",
        ["start line"] = "start-direction",
        ["launch direction"] = "start-direction",
        ["spin"] = "spin-rate",
        ["carry distance"] = "carry",
    };

    /// <summary>The form as far as it fills itself.</summary>
    public ColumnsForm Form()
    {
        var club = Head(ClubHeads, c => facts.Columns[c].HasFewWords);
        var columns = Columns(DeviceMeasures.Of(book)).ToList();
        return new ColumnsForm
        {
            Columns = columns,
            ClubColumn = club,
            Clubs = Clubs(club),
            DayColumn = Head(DayHeads, c => facts.Columns[c].First.Any(IsDay)),
            Decimals = Mark(facts, columns.Select(c => c.Column)).Certain is { } mark ? Terms.Of(mark) : "",
        };
    }

    /// <summary>The clubs that a column's words name, as far as they are plain.</summary>
    public Dictionary<string, string> Clubs(int? column) =>
        column is { } at && at < facts.Columns.Count && facts.Columns[at].HasFewWords ? facts.Columns[at].Words.ToDictionary(w => w, ClubOf, StringComparer.OrdinalIgnoreCase) : new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);

    /// <summary>What the numbers of some columns show together.</summary>
    public static MarkEvidence Mark(FileFacts facts, IEnumerable<int> columns)
    {
        var all = new MarkEvidence();
        foreach (var column in columns.Where(c => c >= 0 && c < facts.Columns.Count)) all.Add(facts.Columns[column].Marks);
        return all;
    }

    private IEnumerable<ColumnChoice> Columns(IReadOnlyList<Measure> measures) =>
        from column in facts.Layout.Columns
        where !column.IsDouble
        let measure = measures.FirstOrDefault(m => m.Name.Equals(column.Plain, StringComparison.OrdinalIgnoreCase) || m.Id.Value == Words.GetValueOrDefault(column.Plain))
        where measure is not null
        group (column, measure) by measure.Id into same
        let only = same.First()
        where same.Count() == 1
        select new ColumnChoice(only.column.Index, only.measure.Id.Value, UnitOf(only.column, only.measure), "");

    // A head such as "club speed" without a unit says none: it is asked for.
    private static string UnitOf(FileColumn column, Measure measure) => column.Unit is { } unit && unit.Dimension == measure.Unit.Dimension ? unit.Symbol : "";

    private int? Head(string[] words, Func<int, bool> fits) => facts.Layout.Columns.FirstOrDefault(c => !c.IsDouble && words.Contains(c.Plain) && fits(c.Index))?.Index;

    private static bool IsDay(string cell) => DayCell.Read(cell, DayOrder.DayFirst) is not null || DayCell.Read(cell, DayOrder.MonthFirst) is not null;

    private static string ClubOf(string word)
    {
        var plain = word.ToLowerInvariant();
        if (plain.Contains("putter", StringComparison.Ordinal)) return ColumnsForm.LeftOut;
        if (plain.Contains("driver", StringComparison.Ordinal)) return Terms.Of(Club.Driver);
        if (plain.Contains("hybrid", StringComparison.Ordinal)) return Terms.Of(Club.Hybrid);
        if (plain.Contains("wood", StringComparison.Ordinal)) return Terms.Of(Club.Fairway);
        if (plain.Contains("wedge", StringComparison.Ordinal)) return Terms.Of(Club.Wedge);
        return plain.Contains("iron", StringComparison.Ordinal) ? Terms.Of(Club.Iron) : "";
    }
}
