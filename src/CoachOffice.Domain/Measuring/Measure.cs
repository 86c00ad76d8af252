namespace CoachOffice.Domain.Measuring;

/// <summary>One thing a coach reads from a swing: its unit, sign, limits, error and how to take it alike every time. All numbers are in <see cref="Unit"/>.</summary>
public sealed record Measure
{
    /// <summary>Stable id, kebab-case.</summary>
    public required MeasureId Id { get; init; }

    /// <summary>Name for a person, sentence case.</summary>
    public required string Name { get; init; }

    /// <summary>The measure's own unit; values are stored in it.</summary>
    public required Unit Unit { get; init; }

    /// <summary>From where it is read.</summary>
    public required View View { get; init; }

    /// <summary>The moment it belongs to in the ordering of work.</summary>
    public required Moment Moment { get; init; }

    /// <summary>Words for a positive value, e.g. "away from target".</summary>
    public required string Positive { get; init; }

    /// <summary>Words for a negative value, e.g. "toward target"; null where values are never negative.</summary>
    public string? Negative { get; init; }

    /// <summary>How to take the reading so that the next one is taken alike.</summary>
    public required string HowTo { get; init; }

    /// <summary>Values outside are refused.</summary>
    public required Limits Plausible { get; init; }

    /// <summary>Values outside are taken but raise the caution "device error likely"; null when there is no such band.</summary>
    public Limits? Doubtful { get; init; }

    /// <summary>The part of a reading's standard error that more swings do not shrink.</summary>
    public required double SetupError { get; init; }

    /// <summary>Scatter of one swing, reading included.</summary>
    public required double SwingError { get; init; }

    /// <summary>One step of severity; null for measures that are never graded.</summary>
    public double? Step { get; init; }

    /// <summary>Instruments that can take it; the first is the usual one. Eye is always possible and never listed.</summary>
    public required IReadOnlyList<Instrument> Instruments { get; init; }

    /// <summary>Sides that are never a fault on their own (A1 of the ordering).</summary>
    public IReadOnlyList<Side> NoFaultSides { get; init; } = [];

    /// <summary>Style only: never a focus unless a pattern has fired with it as root.</summary>
    public bool StyleOnly { get; init; }

    /// <summary>An outcome of the swing (ball flight, strike, speed), which counts extra in the ordering.</summary>
    public bool Outcome { get; init; }

    /// <summary>Range and step grow with stature (cm measures, for an adult of 175 cm).</summary>
    public bool ScalesWithStature { get; init; }

    /// <summary>Read at impact from video: under 100 fps it grades at most borderline.</summary>
    public bool NeedsFastVideo { get; init; }

    /// <summary>How it follows from other measures, when it does.</summary>
    public Derivation? Derived { get; init; }

    /// <summary>Position in the rulebook's table of measures, the last key of the ordering; from 0.</summary>
    public required int Row { get; init; }
}
