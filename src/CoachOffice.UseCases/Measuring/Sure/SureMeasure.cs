using CoachOffice.Domain.Measuring;

namespace CoachOffice.UseCases.Measuring.Sure;

/// <summary>How sure the practice is of one measure.</summary>
public sealed record SureMeasure
{
    // So many nobody takes, not even for a device that reads every ball.
    private const int MostSwings = 200;

    public required Measure Measure { get; init; }

    /// <summary>Takes read twice, by instrument.</summary>
    public required IReadOnlyList<MarkingStudy> Twice { get; init; }

    /// <summary>Several swings of a lesson, by instrument.</summary>
    public required IReadOnlyList<SwingStudy> Swings { get; init; }

    /// <summary>Standard error of one swing read once, by the rulebook in force.</summary>
    public double ErrorOfOne => Math.Sqrt((Measure.SetupError * Measure.SetupError) + (Measure.SwingError * Measure.SwingError));

    /// <summary>The practice's own scatter of a swing where it may take the place of the rulebook's: the usual instrument, ten pairs, and never below the error of marking, which is part of it.</summary>
    public Quantity? OwnScatter =>
        Measure.Instruments is [var usual, ..] && Swings.FirstOrDefault(s => s.Instrument == usual) is { IsEnough: true } own
            ? new Quantity(Math.Round(Math.Max(own.Scatter, Twice.FirstOrDefault(t => t.Instrument == usual) is { Pairs: >= SwingStudy.EnoughPairs } twice ? twice.Error : 0), 2, MidpointRounding.AwayFromZero), Measure.Unit)
            : null;

    /// <summary>How many swings, then and now, make a change of one step of severity visible (95 %); null where the camera's part alone hides it, or nothing is graded.</summary>
    public int? SwingsToSeeAStep => Measure.Step is { } step
        ? Enumerable.Range(1, MostSwings).Select(n => (int?)n).FirstOrDefault(n => Verdicts.SmallestRealChange(Mean(n!.Value), Mean(n.Value), Measure).Value <= step)
        : null;

    /// <summary>The change that shows with so many swings then and now (95 %), in the measure's unit.</summary>
    public Quantity Visible(int swings) => Verdicts.SmallestRealChange(Mean(swings), Mean(swings), Measure);

    private MeasuredValue Mean(int swings) => new() { Measure = Measure.Id, Value = new Quantity(0, Measure.Unit), Readings = swings, Instrument = Measure.Instruments is [var usual, ..] ? usual : Instrument.Video };
}
