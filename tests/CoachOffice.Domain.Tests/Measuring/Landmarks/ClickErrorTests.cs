using CoachOffice.Domain.Measuring.Landmarks;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;

namespace CoachOffice.Domain.Tests.Measuring.Landmarks;

public sealed class ClickErrorTests
{
    private const int Draws = 3_000;

    public static TheoryData<string> Measures => [.. PictureMeasures.All.Select(m => m.Id.Value)];

    /// <summary>Every mark of both stills clicked three thousand times with a normal error of three pixels: the spread of the values is what was propagated.</summary>
    [Theory]
    [MemberData(nameof(Measures))]
    public void The_propagated_error_is_the_spread_of_many_clicks(string measure)
    {
        var click = new Normal(0, PictureReadings.ClickPixels, new Random(20261126));
        var values = Enumerable.Range(0, Draws).Select(_ => Stills.Value(measure, Clicked(Stills.Body), Clicked(Stills.Body))).ToList();

        var error = Stills.Read(measure, Stills.Body).Click!.Value.Value;

        // Three thousand draws know a spread to 1.3 percent; what bends within three pixels adds some more.
        Assert.Equal(1, values.StandardDeviation() / error, 0.05);
        Assert.Equal(Stills.Value(measure, Stills.Body), values.Mean(), error / 5);

        StillMarks Clicked(StillMarks marks) => marks.Carried(p => new Pixel(p.X + click.Sample(), p.Y + click.Sample()));
    }

    [Fact]
    public void A_longer_line_is_read_more_surely()
    {
        var near = Stills.Body.With((Landmark.BeltMiddle, 500, 500), (Landmark.NeckBase, 480, 400));
        var far = Stills.Body.With((Landmark.BeltMiddle, 500, 500), (Landmark.NeckBase, 440, 200));

        Assert.True(Stills.Read("top-spine-tilt", far).Click!.Value.Value < Stills.Read("top-spine-tilt", near).Click!.Value.Value);
    }
}
