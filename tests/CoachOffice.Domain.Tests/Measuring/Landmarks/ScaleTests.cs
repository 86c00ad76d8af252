using CoachOffice.Domain.Measuring.Landmarks;
using CsCheck;

namespace CoachOffice.Domain.Tests.Measuring.Landmarks;

public sealed class ScaleTests
{
    [Fact]
    public void The_oracle_is_the_published_one()
    {
        // Umeyama (1991), section IV: rotation 0.832 0.555 / -0.555 0.832, scale 0.721, shift -0.800 0.400. A solution without the guard is a reflection.
        var fit = Similarity.Between([(0, 0), (1, 0), (0, 2)], [(0, 0), (-1, 0), (0, 2)]);

        Assert.Equal([0.8320502943, -0.5547001962, 0.5547001962, 0.8320502943], fit.Rotation.ToColumnMajorArray(), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal(0.7211102551, fit.Scale, 1e-9);
        Assert.Equal([-0.8, 0.4], fit.Shift.ToArray(), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal(0.5333333, fit.MeanSquaredError, 1e-6);
    }

    /// <summary>A picture at any scale, roll and place, mirrored or not: carried back to the world by the oracle, lengths are those read by plumb line and known length.</summary>
    [Fact]
    public void Lengths_are_those_of_the_world_at_any_scale_roll_and_place() =>
        Gen.Select(Gen.Double[0.5, 8], Gen.Double[-0.6, 0.6], Gen.Double[-500, 500], Gen.Bool, Gen.Double[-30, 30].Array[4]).Sample((scale, roll, shift, mirrored, places) =>
        {
            (double X, double Y)[] world = [(0, 200), (0, 10), (-50, 0), (70, 3), (places[0], 1), (places[1], 2 + places[2]), (places[3] - 40, 2)];
            var known = Math.Sqrt((120 * 120) + (3 * 3));
            var picture = world.Select(p => Taken(p, scale, roll, shift, mirrored)).ToArray();
            var marks = new StillMarks { KnownLengthCm = known, Toward = mirrored ? PictureSide.Left : PictureSide.Right, Marks = [.. Order.Select((l, i) => Stills.Of(l, picture[i].X, picture[i].Y))] };

            // The oracle knows no mirror and has its second axis upward: it is given the picture as seen through one.
            var flat = picture.Select(p => (mirrored ? -p.X : p.X, -p.Y)).ToArray();
            var fit = Similarity.Between(flat[..4], world[..4]);
            var ball = fit.Carry(flat[4]).X - ((fit.Carry(flat[5]).X + fit.Carry(flat[6]).X) / 2);

            Assert.Equal(ball, Stills.Value("ball-forward-of-centre", marks), 1e-6);
            Assert.Equal(places[0] - ((places[1] + places[3] - 40) / 2), ball, 1e-6);
        });

    private static readonly Landmark[] Order = [Landmark.PlumbTop, Landmark.PlumbBottom, Landmark.LengthStart, Landmark.LengthEnd, Landmark.Ball, Landmark.LeadHeel, Landmark.TrailHeel];

    private static (double X, double Y) Taken((double X, double Y) at, double scale, double roll, double shift, bool mirrored)
    {
        var (x, y) = (mirrored ? -at.X : at.X, -at.Y);
        return ((scale * ((x * Math.Cos(roll)) - (y * Math.Sin(roll)))) + shift, (scale * ((x * Math.Sin(roll)) + (y * Math.Cos(roll)))) - shift);
    }
}
