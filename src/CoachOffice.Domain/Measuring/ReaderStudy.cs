using MathNet.Numerics.Distributions;

namespace CoachOffice.Domain.Measuring;

/// <summary>
/// Targets read by the same number of readers each, analysed by variance: Shrout and Fleiss (1979), Weir (2005).
/// All numbers are in the unit of the readings or its square.
/// </summary>
public sealed class ReaderStudy
{
    private const double UpperTail = 0.975;

    private readonly int _targets;
    private readonly int _readers;

    private ReaderStudy(IReadOnlyList<IReadOnlyList<double>> rows)
    {
        (_targets, _readers) = (rows.Count, rows[0].Count);
        var grand = rows.SelectMany(r => r).Average();
        var betweenTargets = _readers * rows.Sum(r => Square(r.Average() - grand));
        var betweenReaders = _targets * Enumerable.Range(0, _readers).Sum(j => Square(rows.Average(r => r[j]) - grand));
        var within = rows.Sum(r => r.Sum(v => Square(v - r.Average())));
        BetweenTargets = betweenTargets / (_targets - 1);
        BetweenReaders = betweenReaders / (_readers - 1);
        Within = within / (_targets * (_readers - 1));
        Residual = (within - betweenReaders) / ((_targets - 1) * (_readers - 1));
    }

    /// <summary>How many targets were read.</summary>
    public int Targets => _targets;

    /// <summary>Mean square between targets.</summary>
    public double BetweenTargets { get; }

    /// <summary>Mean square between readers.</summary>
    public double BetweenReaders { get; }

    /// <summary>Mean square within targets.</summary>
    public double Within { get; }

    /// <summary>What is left, as a mean square.</summary>
    public double Residual { get; }

    /// <summary>Standard error of one reading by a reader who keeps their own bias: the root of the residual mean square (Weir 2005).</summary>
    public double ConsistencyError => Math.Sqrt(Residual);

    /// <summary>Standard error of one reading by any reader: readers' bias counts as well. A bias that comes out negative is none.</summary>
    public double AgreementError => Math.Sqrt(Residual + Math.Max(0, (BetweenReaders - Residual) / _targets));

    /// <summary>The change of single readings that reading error alone rarely makes (95 %): 1.96 * root 2 times the error (Weir 2005).</summary>
    public double SmallestRealChange => 1.96 * Math.Sqrt(2) * ConsistencyError;

    /// <summary>Of two or more targets, each read by the same two or more readers in one unit; throws otherwise.</summary>
    public static ReaderStudy Of(IReadOnlyList<IReadOnlyList<Quantity>> targets)
    {
        ArgumentNullException.ThrowIfNull(targets);
        if (targets.Count < 2 || targets[0].Count < 2 || targets.Any(t => t.Count != targets[0].Count))
            throw new ArgumentException("Two targets at least, each read as often as the others and at least twice.", nameof(targets));
        var unit = targets[0][0].Unit;
        return new ReaderStudy([.. targets.Select(t => (IReadOnlyList<double>)[.. t.Select(q => q.In(unit).Value)])]);
    }

    /// <summary>One of the six correlations; null when the readings do not differ at all.</summary>
    public Icc? Correlation(IccForm form)
    {
        if (BetweenTargets <= 0 && Within <= 0) return null;
        var single = form switch
        {
            IccForm.OneWaySingle or IccForm.OneWayMean => OneWay(),
            IccForm.AgreementSingle or IccForm.AgreementMean => Agreement(),
            _ => Consistency(),
        };
        return form is IccForm.OneWaySingle or IccForm.AgreementSingle or IccForm.ConsistencySingle
            ? single with { Form = form }
            : new Icc(form, OfMean(single.Value), new Limits(OfMean(single.Interval.Low!.Value), OfMean(single.Interval.High!.Value)));
    }

    private Icc OneWay() => new(IccForm.OneWaySingle, Share(BetweenTargets, Within), Interval(BetweenTargets / Within, _targets * (_readers - 1)));

    private Icc Consistency() => new(IccForm.ConsistencySingle, Share(BetweenTargets, Residual), Interval(BetweenTargets / Residual, (_targets - 1) * (_readers - 1)));

    private double Share(double between, double rest) => (between - rest) / (between + ((_readers - 1) * rest));

    private Limits Interval(double f, int restDegrees)
    {
        var low = f / FisherSnedecor.InvCDF(_targets - 1, restDegrees, UpperTail);
        var high = f * FisherSnedecor.InvCDF(restDegrees, _targets - 1, UpperTail);
        return new Limits((low - 1) / (low + _readers - 1), (high - 1) / (high + _readers - 1));
    }

    /// <summary>The interval has no closed form; degrees of freedom after Satterthwaite, as Shrout and Fleiss give them.</summary>
    private Icc Agreement()
    {
        double n = _targets, k = _readers;
        var value = (BetweenTargets - Residual) / (BetweenTargets + ((k - 1) * Residual) + (k * (BetweenReaders - Residual) / n));
        var bias = k * value * BetweenReaders / Residual;
        var rest = (n * (1 + ((k - 1) * value))) - (k * value);
        var degrees = (k - 1) * (n - 1) * Square(bias + rest) / (((n - 1) * Square(bias)) + Square(rest));
        var below = FisherSnedecor.InvCDF(n - 1, degrees, UpperTail);
        var above = FisherSnedecor.InvCDF(degrees, n - 1, UpperTail);
        var spread = (k * BetweenReaders) + (((k * n) - k - n) * Residual);
        return new Icc(
            IccForm.AgreementSingle,
            value,
            new Limits(
                n * (BetweenTargets - (below * Residual)) / ((below * spread) + (n * BetweenTargets)),
                n * ((above * BetweenTargets) - Residual) / (spread + (n * above * BetweenTargets))));
    }

    /// <summary>From one reading to the mean of all readers (Spearman and Brown).</summary>
    private double OfMean(double single) => _readers * single / (1 + ((_readers - 1) * single));

    private static double Square(double value) => value * value;
}
