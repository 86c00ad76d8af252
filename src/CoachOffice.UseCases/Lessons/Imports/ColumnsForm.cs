using CoachOffice.Domain;
using CoachOffice.Domain.Lessons.Imports;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>The form in which a coach says what a file's columns hold; empty is not said yet.</summary>
public sealed record ColumnsForm
{
    /// <summary>The word for a club whose swings are left out.</summary>
    public const string LeftOut = "none";

    /// <summary>Columns that hold a measure.</summary>
    public IReadOnlyList<ColumnChoice> Columns { get; init; } = [];

    public int? ClubColumn { get; init; }

    /// <summary>Word of the file to word of a club.</summary>
    public IReadOnlyDictionary<string, string> Clubs { get; init; } = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);

    /// <summary>The club of the whole file.</summary>
    public string Club { get; init; } = "";

    public int? DayColumn { get; init; }

    public string DayOrder { get; init; } = "";

    /// <summary>The day of the whole file, ISO.</summary>
    public string Day { get; init; } = "";

    public string Decimals { get; init; } = "";

    /// <summary>The form filled in as it was answered before.</summary>
    public static ColumnsForm Of(ColumnMapping mapping)
    {
        ArgumentNullException.ThrowIfNull(mapping);
        return new ColumnsForm
        {
            Columns = [.. mapping.Columns.Select(c => new ColumnChoice(c.Column, c.Measure.Value, c.Unit, Terms.Of(c.Plus)))],
            ClubColumn = mapping.ClubColumn,
            Clubs = mapping.ClubWords.ToDictionary(w => w.Word, w => w.Club is { } club ? Terms.Of(club) : LeftOut, StringComparer.OrdinalIgnoreCase),
            DayColumn = mapping.DayColumn,
            DayOrder = mapping.DayOrder is { } order ? Terms.Of(order) : "",
            Decimals = mapping.Decimals is { } mark ? Terms.Of(mark) : "",
        };
    }
}
