using CoachOffice.Domain.Measuring;
using MathNet.Numerics;
using MathNet.Numerics.Statistics;

namespace CoachOffice.Domain.Tests.Measuring;

public sealed class ReaderStudyTests
{
    /// <summary>Shrout PE, Fleiss JL (1979) Intraclass correlations: uses in assessing rater reliability. Psychological Bulletin 86(2):420-428, Table 2.</summary>
    private static readonly ReaderStudy Published = Study([9, 2, 5, 8], [6, 1, 3, 2], [8, 4, 6, 8], [7, 1, 2, 6], [10, 5, 6, 9], [6, 2, 4, 7]);

    /// <summary>Weir JP (2005) J Strength Cond Res 19(1):231-240, data set A; the data from memory, consistent with its published sum of squares.</summary>
    private static readonly ReaderStudy Weir = Study([146, 140], [148, 152], [170, 152], [90, 99], [157, 145], [156, 153], [176, 167], [205, 218]);

    [Fact]
    public void Mean_squares_of_the_published_table()
    {
        Assert.Equal(11.241667, Published.BetweenTargets, 1e-6);
        Assert.Equal(6.263889, Published.Within, 1e-6);
        Assert.Equal(32.486111, Published.BetweenReaders, 1e-6);
        Assert.Equal(1.019444, Published.Residual, 1e-6);
        Assert.Equal(6, Published.Targets);
    }

    /// <summary>Two decimals as published; full precision and limits as the R package psych computes them from the published table.</summary>
    [Theory]
    [InlineData(IccForm.OneWaySingle, .17, .1657417684, -.132932, .722560)]
    [InlineData(IccForm.AgreementSingle, .29, .2897637795, .018787, .761084)]
    [InlineData(IccForm.ConsistencySingle, .71, .7148407148, .342465, .945858)]
    [InlineData(IccForm.OneWayMean, .44, .4427971337, -.884442, .912415)]
    [InlineData(IccForm.AgreementMean, .62, .6200505476, .071137, .927232)]
    [InlineData(IccForm.ConsistencyMean, .91, .9093155424, .675675, .985892)]
    public void The_six_correlations_of_the_published_table(IccForm form, double printed, double full, double low, double high)
    {
        var icc = Published.Correlation(form)!;
        Assert.Equal(form, icc.Form);
        Assert.Equal(printed, icc.Value, .005);
        Assert.Equal(full, icc.Value, 1e-9);
        Assert.Equal(low, icc.Interval.Low!.Value, 1e-5);
        Assert.Equal(high, icc.Interval.High!.Value, 1e-5);
    }

    /// <summary>Formulae of Weir (2005); numbers computed from the published table of Shrout and Fleiss.</summary>
    [Fact]
    public void Errors_of_one_reading_and_the_smallest_real_change()
    {
        Assert.Equal(1.0096754154, Published.ConsistencyError, 1e-9);
        Assert.Equal(2.5027762363, Published.AgreementError, 1e-9);
        Assert.Equal(2.7986774654, Published.SmallestRealChange, 1e-9);
    }

    [Fact]
    public void Two_trials_of_eight_subjects()
    {
        Assert.Equal(2098.535714, Weir.BetweenTargets, 1e-6);
        Assert.Equal(30.25, Weir.BetweenReaders, 1e-8);
        Assert.Equal(57.107143, Weir.Residual, 1e-6);
        Assert.Equal(53.75, Weir.Within, 1e-8);
        Assert.Equal([.9500530997, .9499750706, .9470161370], new[] { IccForm.OneWaySingle, IccForm.AgreementSingle, IccForm.ConsistencySingle }.Select(f => Math.Round(Weir.Correlation(f)!.Value, 10)));
        Assert.Equal(7.5569268130, Weir.ConsistencyError, 1e-8);
        Assert.Equal(20.9467324421, Weir.SmallestRealChange, 1e-8);

        // Less scatter between trials than within leaves no bias of the trials to count.
        Assert.Equal(Weir.ConsistencyError, Weir.AgreementError, 1e-12);
    }

    /// <summary>Hopkins WG (2000) Sports Med 30(1):1-15: the typical error is the standard deviation of differences over root 2, which for two trials is the same error.</summary>
    [Fact]
    public void For_two_trials_the_typical_error_is_the_consistency_error()
    {
        double[] differences = [-6, 4, -18, 9, -12, -3, -9, 13];
        Assert.Equal(10.687108, differences.StandardDeviation(), 1e-6);
        Assert.Equal(differences.StandardDeviation() / Math.Sqrt(2), Weir.ConsistencyError, 1e-9);
    }

    [Fact]
    public void Readings_that_never_differ_have_no_correlation()
    {
        var same = Study([14, 14], [14, 14], [14, 14]);
        Assert.Null(same.Correlation(IccForm.AgreementSingle));
        Assert.Equal(0, same.AgreementError);
    }

    [Fact]
    public void A_study_needs_two_targets_read_equally_often()
    {
        Assert.Throws<ArgumentException>(() => Study([14, 15]));
        Assert.Throws<ArgumentException>(() => Study([14], [15]));
        Assert.Throws<ArgumentException>(() => Study([14, 15], [15, 16, 17]));
    }

    /// <summary>NIST StRD univariate, certified: the arithmetic our standard deviations rest on.</summary>
    [Theory]
    [InlineData(1.2, .1, 1.1, 1.3, 1e-13)]
    [InlineData(1000000.2, .1, 1000000.1, 1000000.3, 1e-9)]
    [InlineData(10000000.2, .1, 10000000.1, 10000000.3, 1e-7)]
    public void Standard_deviations_keep_the_certified_digits(double mean, double deviation, double low, double high, double relative)
    {
        double[] values = [mean, .. Enumerable.Range(0, 500).SelectMany(_ => new[] { low, high })];
        Assert.Equal(mean, values.Mean(), mean * 1e-14);
        Assert.Equal(deviation, values.StandardDeviation(), deviation * relative);
    }

    [Fact]
    public void Three_large_numbers_keep_theirs() =>
        Assert.Equal((10000002, 1), (new double[] { 10000001, 10000003, 10000002 }.Mean(), new double[] { 10000001, 10000003, 10000002 }.StandardDeviation()));

    /// <summary>NIST StRD linear regression, Norris, certified slope and intercept: the least-squares line a robust trend is compared with.</summary>
    [Fact]
    public void The_certified_line_through_thirty_six_points()
    {
        double[] y = [.1, 338.8, 118.1, 888, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, .3, .1, 778.1, 668.8, 339.3, 448.9, 10.8, 557.7, 228.3, 998, 888.8, 119.6, .3, .6, 557.6, 339.3, 888, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2, .2];
        double[] x = [.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777, 558.2, .4, .6, 775.5, 666.9, 338, 447.5, 11.6, 556, 228.1, 995.8, 887.6, 120.2, .3, .3, 556.8, 339.1, 887.2, 999, 779, 11.1, 118.3, 229.2, 669.1, 448.9, .5];
        var (intercept, slope) = Fit.Line(x, y);
        Assert.Equal(1.00211681802045, slope, 1e-11);
        Assert.Equal(-.262323073774029, intercept, 1e-9);
    }

    private static ReaderStudy Study(params double[][] rows) => ReaderStudy.Of([.. rows.Select(r => (IReadOnlyList<Quantity>)[.. r.Select(v => new Quantity(v, Unit.Centimetre))])]);
}
