namespace CoachOffice.Domain.Lessons.Imports;

/// <summary>How the files of a device are read: said once by a coach, remembered by the names of the columns.</summary>
public sealed record ColumnMapping
{
    /// <summary>The columns with measures.</summary>
    public IReadOnlyList<MappedColumn> Columns { get; init; } = [];

    /// <summary>The column that names the club; null when a file holds the swings of one club.</summary>
    public int? ClubColumn { get; init; }

    /// <summary>What that column's words mean.</summary>
    public IReadOnlyList<ClubWord> ClubWords { get; init; } = [];

    /// <summary>The column with the day; null when a file holds the swings of one day.</summary>
    public int? DayColumn { get; init; }

    /// <summary>Needed only where the file's days leave it open.</summary>
    public DayOrder? DayOrder { get; init; }

    /// <summary>Needed only where the file's numbers leave it open.</summary>
    public DecimalMark? Decimals { get; init; }
}
