using CoachOffice.Domain.Measuring;

namespace CoachOffice.UseCases.Measuring.Sure;

/// <summary>Takes read twice with one instrument: the error of marking, in the measure's unit.</summary>
public sealed record MarkingStudy
{
    public required Instrument Instrument { get; init; }

    /// <summary>How many takes were read twice.</summary>
    public required int Pairs { get; init; }

    /// <summary>How many of them by the same coach.</summary>
    public required int BySameReader { get; init; }

    /// <summary>Standard error of one reading: the within-take standard deviation (Bland and Altman 1996).</summary>
    public required double Error { get; init; }

    /// <summary>The change of single readings of one and the same swing that marking alone rarely makes (95 %).</summary>
    public required double SmallestRealChange { get; init; }

    /// <summary>Second minus first, on average; away from 0 when one reader sees it otherwise.</summary>
    public required double Bias { get; init; }

    /// <summary>ICC(2,1) of Shrout and Fleiss when all were read by another coach, ICC(1,1) otherwise; null below three pairs.</summary>
    public required Icc? Correlation { get; init; }

    internal static MarkingStudy Of(Instrument instrument, IReadOnlyList<DoubleRead> read, Unit unit)
    {
        IReadOnlyList<IReadOnlyList<Quantity>> pairs = [.. read.Select(r => (IReadOnlyList<Quantity>)[new Quantity(r.Double.First, unit), new Quantity(r.Double.Second, unit)])];
        var repeated = RepeatedReadings.Of(pairs);
        var same = read.Count(r => r.IsSameReader);
        return new MarkingStudy
        {
            Instrument = instrument,
            Pairs = read.Count,
            BySameReader = same,
            Error = repeated.WithinSubject,
            SmallestRealChange = repeated.SmallestRealChange,
            Bias = read.Average(r => r.Double.Second - r.Double.First),
            Correlation = read.Count < 3 ? null : ReaderStudy.Of(pairs).Correlation(same == 0 ? IccForm.AgreementSingle : IccForm.OneWaySingle),
        };
    }
}
