using CoachOffice.Domain.Measuring;
using MathNet.Numerics.Distributions;

namespace CoachOffice.Domain.Tests.Measuring;

/// <summary>Worked examples of reading error from the literature, reproduced by the arithmetic the practice uses on its own readings.</summary>
public sealed class PublishedErrorTests
{
    // Bland JM, Altman DG (1986) Lancet i:307-310: peak expiratory flow, l/min, 17 subjects; data as in github.com/deepankardatta/blandr.
    private static readonly double[] WrightFirst = [494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427];
    private static readonly double[] WrightSecond = [490, 397, 512, 401, 470, 611, 415, 431, 638, 429, 420, 633, 275, 492, 165, 372, 421];
    private static readonly double[] MiniFirst = [512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451];
    private static readonly double[] MiniSecond = [525, 415, 508, 444, 500, 625, 460, 390, 642, 432, 420, 605, 227, 467, 268, 370, 443];

    [Fact]
    public void Limits_of_agreement_of_two_flow_meters()
    {
        // Published: mean difference -2.1, SD 38.8, SE 9.4, interval -22.0 to 17.8, SE of a limit 16.3; full precision recomputed.
        var agreement = Agreement.Of(Numbers(WrightFirst), Numbers(MiniFirst));
        Assert.Equal(-2.117647, agreement.Bias, 1e-5);
        Assert.Equal(38.765130, agreement.Spread, 1e-5);
        Assert.Equal(9.401925, agreement.BiasError, 1e-5);
        Assert.Equal(-22.04884, agreement.BiasInterval.Low!.Value, 1e-5);
        Assert.Equal(17.81354, agreement.BiasInterval.High!.Value, 1e-5);
        Assert.Equal(16.28461, agreement.LimitError, 1e-5);
        Assert.Equal(-78.097302, agreement.OfNineteenInTwenty.Low!.Value, 1e-5);
        Assert.Equal(73.862007, agreement.OfNineteenInTwenty.High!.Value, 1e-5);
        Assert.Equal(-79.7, agreement.Bias - (2 * agreement.Spread), 0.25);
        Assert.Equal(75.5, agreement.Bias + (2 * agreement.Spread), 0.25);
    }

    [Fact]
    public void Repeatability_of_one_flow_meter_read_twice()
    {
        // Bland and Altman (1986), rounded there to 43.2 and 56.4 (from memory); full precision recomputed.
        var wright = RepeatedReadings.Of(Pairs(WrightFirst, WrightSecond));
        Assert.Equal(43.293799, wright.Repeatability, 1e-5);
        Assert.Equal(15.306670, wright.WithinSubject, 1e-5);
        var mini = RepeatedReadings.Of(Pairs(MiniFirst, MiniSecond));
        Assert.Equal(56.316331, mini.Repeatability, 1e-5);
        Assert.Equal(19.910830, mini.WithinSubject, 1e-5);
    }

    [Fact]
    public void Four_flow_readings_of_each_child()
    {
        // Bland JM, Altman DG (1996) BMJ 313:744, table 1, rows 1 to 16 of 20; the within-subject SD of these rows is recomputed, not published.
        var children = RepeatedReadings.Of(
        [
            Numbers(190, 220, 200, 200), Numbers(220, 200, 240, 230), Numbers(260, 260, 240, 280), Numbers(210, 300, 280, 265),
            Numbers(270, 265, 280, 270), Numbers(280, 280, 270, 275), Numbers(260, 280, 280, 300), Numbers(275, 275, 275, 305),
            Numbers(280, 290, 300, 290), Numbers(320, 290, 300, 290), Numbers(300, 300, 310, 300), Numbers(270, 250, 330, 370),
            Numbers(320, 330, 330, 330), Numbers(335, 320, 335, 375), Numbers(350, 320, 340, 365), Numbers(360, 320, 350, 345),
        ]);
        double[] means = [202.50, 222.50, 260.00, 263.75, 271.25, 276.25, 280.00, 282.50, 290.00, 300.00, 302.50, 305.00, 327.50, 341.25, 343.75, 343.75];
        double[] spreads = [12.58, 17.08, 16.33, 38.60, 6.29, 4.79, 16.33, 15.00, 8.16, 14.14, 5.00, 55.08, 5.00, 23.58, 18.87, 17.02];
        Assert.All(means.Zip(children.Means), pair => Assert.Equal(pair.First, pair.Second, 0.005));
        Assert.All(spreads.Zip(children.StandardDeviations), pair => Assert.Equal(pair.First, pair.Second, 0.0051));
        Assert.Equal(21.378289, children.WithinSubject, 1e-6);
    }

    [Fact]
    public void Root_mean_square_of_duplicate_readings()
    {
        // R. Baker, notes on gait measurement, wwrichard.net: SDs 5.7 4.2 5.7 2.8 2.1; the SD of two readings is their difference over root 2.
        double[] spreads = [5.7, 4.2, 5.7, 2.8, 2.1];
        var twice = RepeatedReadings.Of([.. spreads.Select(sd => Numbers(100, 100 + (sd * Math.Sqrt(2))))]);
        Assert.Equal(4.3559155180, twice.WithinSubject, 1e-9);
    }

    [Fact]
    public void Smallest_real_change_of_six_targets_and_four_judges()
    {
        // Weir (2005), J Strength Cond Res 19:231-240: SEM * 1.96 * root 2; the SEM 1.0096754154 is that of Shrout and Fleiss (1979), recomputed.
        var half = 1.0096754154 / Math.Sqrt(2);
        var readings = RepeatedReadings.Of([Numbers(5 - half, 5 + half)]);
        Assert.Equal(1.0096754154, readings.WithinSubject, 1e-9);
        Assert.Equal(2.7986774654, readings.SmallestRealChange, 1e-9);
    }

    [Fact]
    public void Two_pairs_agree_or_not_but_one_or_an_odd_one_out_says_nothing()
    {
        Assert.Equal((2, -1.5), Agreement.Of(Numbers(4, 5), Numbers(5, 7)) is { } a ? (a.Pairs, a.Bias) : default);
        Assert.Throws<ArgumentException>(() => Agreement.Of(Numbers(4), Numbers(5)));
        Assert.Throws<ArgumentException>(() => Agreement.Of(Numbers(4, 5, 6), Numbers(5, 7)));
        Assert.Throws<ArgumentException>(() => Agreement.Of([], []));
    }

    [Fact]
    public void Ways_of_reading_are_compared_in_the_unit_of_the_first()
    {
        var agreement = Agreement.Of([new(10, Unit.Centimetre), new(20, Unit.Centimetre)], [new(90, Unit.Millimetre), new(.19, Unit.Metre)]);
        Assert.Equal((1, 0), (agreement.Bias, agreement.Spread));
    }

    [Fact]
    public void Every_subject_is_read_at_least_twice()
    {
        Assert.Throws<ArgumentException>(() => RepeatedReadings.Of([]));
        Assert.Throws<ArgumentException>(() => RepeatedReadings.Of([Numbers(4, 5), Numbers(4)]));
    }

    [Theory]
    [InlineData(1, 12.7062047362)]
    [InlineData(2, 4.3026527297)]
    [InlineData(5, 2.5705818356)]
    [InlineData(9, 2.2621571628)]
    [InlineData(10, 2.2281388520)]
    [InlineData(16, 2.1199052992)]
    [InlineData(30, 2.0422724563)]
    [InlineData(100, 1.9839715185)]
    public void Students_t_as_tabled(double degrees, double quantile) =>
        Assert.Equal(quantile, StudentT.InvCDF(0, 1, degrees, 0.975), 1e-8); // NIST/SEMATECH e-Handbook 1.3.6.7.2, to 10 digits

    [Theory]
    [InlineData(0.90, 1.281551565545)]
    [InlineData(0.95, 1.644853626951)]
    [InlineData(0.975, 1.959963984540)]
    [InlineData(0.99, 2.326347874041)]
    [InlineData(0.995, 2.575829303549)]
    [InlineData(0.999, 3.090232306168)]
    public void The_normal_distribution_as_tabled(double probability, double quantile)
    {
        // NIST/SEMATECH e-Handbook 1.3.6.7.1, to 12 digits; the grading's "chance outside" rests on the same function.
        Assert.Equal(quantile, Normal.InvCDF(0, 1, probability), 1e-9);
        Assert.Equal(probability, Normal.CDF(0, 1, quantile), 1e-9);
    }

    private static IReadOnlyList<Quantity> Numbers(params double[] values) => [.. values.Select(v => new Quantity(v, Unit.Ratio))];

    private static IReadOnlyList<IReadOnlyList<Quantity>> Pairs(double[] first, double[] second) => [.. first.Zip(second, (a, b) => Numbers(a, b))];
}
