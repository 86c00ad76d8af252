using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Reading;

/// <summary>A worked case beside a pattern: with these readings it must fire, or must not. Cases are no part of the rulebook's hash.</summary>
public sealed record PatternCase
{
    /// <summary>The pattern it is about.</summary>
    public required PatternId Pattern { get; init; }

    /// <summary>What the case shows, for a person.</summary>
    public required string Name { get; init; }

    /// <summary>The club swung.</summary>
    public required Club Club { get; init; }

    /// <summary>The readings, each taken with the measure's usual instrument, sorted by measure.</summary>
    public required IReadOnlyList<MeasuredValue> Readings { get; init; }

    /// <summary>Wanted club-head speed, or null.</summary>
    public Quantity? ClubSpeedGoal { get; init; }

    /// <summary>Whether the pattern fires.</summary>
    public required bool Fires { get; init; }

    /// <summary>One sentence why.</summary>
    public required string Why { get; init; }

    /// <summary>File it stands in.</summary>
    public required string File { get; init; }

    /// <summary>Line it begins in, from 1.</summary>
    public required int Line { get; init; }

    /// <summary>Column it begins at, from 1.</summary>
    public required int Column { get; init; }

    /// <summary>Way to it inside the file.</summary>
    public required string Path { get; init; }

    /// <summary>A fault at the place of this case, when it did not come out as it says.</summary>
    public Fault Failed(string message) => new(File, Line, Column, Path, message);
}
