using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Tests.Measuring;

public sealed class TakingTests
{
    [Theory]
    [InlineData(102, 12)]
    [InlineData(112, 22)]
    [InlineData(84, -6)]
    public void A_line_read_from_the_ground_on_the_target_side(double asRead, double away)
    {
        // Common practice, no source.
        var tilt = AsRead.TiltFromTargetSide(new Quantity(asRead, Unit.Degree));
        Assert.Equal(away, tilt.Value);
        Assert.Equal(asRead, AsRead.OnTargetSide(tilt).Value);
    }

    [Theory]
    [InlineData(24, false)]
    [InlineData(14.6, false)]
    [InlineData(4.6, false)]
    [InlineData(4.5, true)]
    [InlineData(24.6, false)]
    [InlineData(24.7, true)]
    public void Tilt_at_impact_fits_the_shifts_or_one_was_read_differently(double impact, bool disagrees)
    {
        // Own geometry: 8 at address, pelvis 10 cm, head 4 cm toward the target: 8 + 1.1 * 6 = 14.6, and ten degrees of grace.
        Finding[] findings = [.. new[] { Reading("address-spine-tilt", 8), Reading("downswing-pelvis-shift", 10), Reading("head-drift", 4), Reading("impact-spine-tilt", impact) }];
        Assert.Equal(14.6, TiltConsistency.ExpectedAtImpact(findings)!.Value.Value, 9);
        Assert.Equal(disagrees, TiltConsistency.Disagrees(findings));
        Assert.All(Enumerable.Range(0, 3), missing => Assert.Null(TiltConsistency.ExpectedAtImpact([.. findings[..missing], .. findings[(missing + 1)..]])));
        Assert.False(TiltConsistency.Disagrees(findings[..3]));
    }

    [Fact]
    public void The_tilts_and_shifts_it_compares_are_those_of_the_rulebook() =>
        Assert.Equal(["address-spine-tilt", "impact-spine-tilt", "downswing-pelvis-shift", "head-drift"], TiltConsistency.Compared.Select(m => m.Value));

    [Theory]
    [InlineData(12.1, "in", "cm", 30.734)]
    [InlineData(105, "mph", "m/s", 46.9392)]
    [InlineData(250, "yd", "m", 228.6)]
    [InlineData(18, "km/h", "m/s", 5)]
    public void Units_convert_exactly(double value, string from, string to, double expected) =>
        Assert.Equal(expected, new Quantity(value, Unit.Find(from)!).In(Unit.Find(to)!).Value);

    [Fact]
    public void Units_agree_with_an_independent_library()
    {
        Assert.Equal(UnitsNet.Length.FromInches(7.3).Millimeters, In(7.3, Unit.Inch, Unit.Millimetre), 1e-9);
        Assert.Equal(UnitsNet.Length.FromYards(7.3).Meters, In(7.3, Unit.Yard, Unit.Metre), 1e-9);
        Assert.Equal(UnitsNet.Length.FromFeet(7.3).Centimeters, In(7.3, Unit.Foot, Unit.Centimetre), 1e-9);
        Assert.Equal(UnitsNet.Speed.FromMilesPerHour(105.7).MetersPerSecond, In(105.7, Unit.MilePerHour, Unit.MetrePerSecond), 1e-9);
        Assert.Equal(UnitsNet.Speed.FromKilometersPerHour(105.7).MetersPerSecond, In(105.7, Unit.KilometrePerHour, Unit.MetrePerSecond), 1e-9);
    }

    private static double In(double value, Unit from, Unit to) => new Quantity(value, from).In(to).Value;

    private static Finding Reading(string id, double value)
    {
        var measure = Lessons.Tilt with { Id = MeasureId.From(id) };
        return new Finding
        {
            Measure = measure,
            Value = new Quantity(value, measure.Unit),
            Readings = 1,
            StandardError = 1,
            Range = null,
            Side = Side.None,
            Grade = Grade.NoRange,
            OutsideBy = 0,
            Step = null,
            ChanceOutside = 0,
        };
    }
}
