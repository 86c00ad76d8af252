using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Students.Merging;

/// <summary>Two records of one person, side by side.</summary>
public sealed record MergeView
{
    public required Student Stays { get; init; }

    public required Student Goes { get; init; }

    /// <summary>Every field; those that differ are to be chosen.</summary>
    public required IReadOnlyList<MergeField> Fields { get; init; }

    /// <summary>What hangs on the two records, in rows: lessons, plans, seats and so on.</summary>
    public required IReadOnlyList<MergeCount> Counts { get; init; }

    /// <summary>Why the two cannot become one yet; empty when they can.</summary>
    public required IReadOnlyList<Domain.Refusal> InTheWay { get; init; }

    /// <summary>True when consent to stills and clips was withdrawn on one of them and stands on the other: it counts as withdrawn.</summary>
    public required bool ConsentEnds { get; init; }

    /// <summary>True when two different people pay: the account of the one who is not chosen stays as it is.</summary>
    public bool TwoPayers => Stays.PayerId is { } one && Goes.PayerId is { } other && one != other;
}
