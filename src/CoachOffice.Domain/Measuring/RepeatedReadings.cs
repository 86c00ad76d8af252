using MathNet.Numerics.Statistics;

namespace CoachOffice.Domain.Measuring;

/// <summary>The same thing read more than once, subject by subject: what the practice's own reading error is. All numbers are in the unit of the readings.</summary>
public sealed class RepeatedReadings
{
    private readonly IReadOnlyList<IReadOnlyList<double>> _subjects;

    private RepeatedReadings(IReadOnlyList<IReadOnlyList<double>> subjects) => _subjects = subjects;

    /// <summary>Two or more readings of each of one or more subjects, all in one unit; throws otherwise.</summary>
    public static RepeatedReadings Of(IReadOnlyList<IReadOnlyList<Quantity>> subjects)
    {
        ArgumentNullException.ThrowIfNull(subjects);
        if (subjects.Count == 0 || subjects.Any(s => s.Count < 2)) throw new ArgumentException("Every subject is read at least twice.", nameof(subjects));
        var unit = subjects[0][0].Unit;
        return new RepeatedReadings([.. subjects.Select(s => (IReadOnlyList<double>)[.. s.Select(q => q.In(unit).Value)])]);
    }

    /// <summary>Each subject's mean.</summary>
    public IReadOnlyList<double> Means => [.. _subjects.Select(s => s.Mean())];

    /// <summary>Each subject's standard deviation (n - 1). For two readings it is their difference over root 2.</summary>
    public IReadOnlyList<double> StandardDeviations => [.. _subjects.Select(s => s.StandardDeviation())];

    /// <summary>Within-subject standard deviation: the root of the mean variance (Bland and Altman 1996; for duplicates the root mean square of the subjects' SDs).</summary>
    public double WithinSubject => RootMeanSquare(StandardDeviations);

    /// <summary>Repeatability: 2 times the root mean square of the differences of duplicates, their mean taken as zero (Bland and Altman 1986).</summary>
    public double Repeatability => 2 * RootMeanSquare([.. _subjects.Select(s => s[0] - s[1])]);

    /// <summary>The change of single readings that reading error alone rarely makes (95 %): 1.96 * root 2 * within-subject SD (Bland and Altman 1996).</summary>
    public double SmallestRealChange => 1.96 * Math.Sqrt(2) * WithinSubject;

    private static double RootMeanSquare(IReadOnlyList<double> values) => Math.Sqrt(values.Average(v => v * v));
}
