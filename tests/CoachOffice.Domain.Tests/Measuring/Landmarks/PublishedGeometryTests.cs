using CoachOffice.Domain.Measuring.Landmarks;

namespace CoachOffice.Domain.Tests.Measuring.Landmarks;

/// <summary>Worked examples of plane and angle geometry, reproduced by what is read from stills.</summary>
public sealed class PublishedGeometryTests
{
    private const double Degree = Math.PI / 180;

    // Bennison GM (1990) An Introduction to Geological Structures and Maps, three-point problem, solved in github.com/nfcd/structuralGeology (nb4): strike 106.45, dip 7.37; full precision recomputed.
    // Points as east, north, up. Adding 400 to all heights gives the same.
    [Theory]
    [InlineData(0)]
    [InlineData(400)]
    public void A_plane_through_three_points_seen_along_its_strike_rises_by_its_dip(double higher) =>
        RisesBy(7.3690203, 106.4469330, [(393, 2374, 550 + higher), (1891, 2738, 650 + higher), (2191, 1037, 450 + higher)]);

    // University of Hawaii GG303, lab 3; the lab asks for whole degrees, full precision computed.
    [Fact]
    public void So_does_another() => RisesBy(45.8682508, 104.0362435, [(400, 100, 400), (0, 0, 200), (0, 300, 500)]);

    // Lisle RJ, Leyshon PR (2004) Stereographic Projection Techniques, solved in github.com/nfcd/structuralGeology (nb3): from apparent dips 002/40 and 135/30 the plane 333.9/60.7; from 300/40 and 088/00 the plane 268.0/57.7; full precision recomputed.
    // A spine leaning 35 degrees out of the picture is a line of such a plane, and a camera turned off square sees its apparent dip.
    [Theory]
    [InlineData(333.9061488, 60.6981067, 2, 40)]
    [InlineData(333.9061488, 60.6981067, 135, 30)]
    [InlineData(268, 57.7262300, 300, 40)]
    [InlineData(268, 57.7262300, 88, 0)]
    public void A_turned_camera_sees_the_apparent_dip(double strike, double dip, double trend, double apparent)
    {
        var steepest = Math.Tan(dip * Degree);
        var aside = Math.Asin(Math.Tan(35 * Degree) / steepest) / Degree;
        var across = Math.Atan(steepest * Math.Cos(aside * Degree)) / Degree;
        var turn = Math.Abs(Math.IEEERemainder(trend - strike - 90, 360)) - aside;
        // A line that rises by the dip leans by the rest of a right angle.
        var marks = Stills.Body.With((Landmark.BeltMiddle, 0, 0), (Landmark.NeckBase, -300 * Math.Tan(across * Degree), -300));

        var seen = Stills.Read("address-spine-tilt", marks with { OffSquareDegrees = turn });

        Assert.Equal(across, seen.Value!.Value.Value, 1e-9);
        Assert.Equal(across - apparent, seen.Camera!.Value.Value, 1e-5);
    }

    // The trade's own figure, own geometry: 5 degrees off square move a side tilt by up to 3.4, 10 by 6.9.
    [Theory]
    [InlineData(5, 3.4)]
    [InlineData(10, 6.9)]
    [InlineData(0, 0)]
    public void A_camera_off_square_moves_a_side_tilt(double off, double by)
    {
        var marks = Stills.Body.With((Landmark.BeltMiddle, 500, 500), (Landmark.NeckBase, 500 - (250 * Math.Tan(14 * Degree)), 250));

        var seen = Stills.Read("impact-spine-tilt", marks with { OffSquareDegrees = off });

        Assert.Equal(14, seen.Value!.Value.Value, 1e-9);
        Assert.Equal(by, seen.Camera!.Value.Value, 0.05);
    }

    // NetTopologySuite, AngleTest.cs: directions of vectors in radians, and the interior angles of a triangle; tolerance there 1e-5.
    [Theory]
    [InlineData(10, 0, 0)]
    [InlineData(10, 10, Math.PI / 4)]
    [InlineData(0, 10, Math.PI / 2)]
    [InlineData(-10, 10, 3 * Math.PI / 4)]
    [InlineData(-10, -0.1, -3.131592986903128)]
    [InlineData(-10, -10, -3 * Math.PI / 4)]
    public void A_line_leans_by_a_right_angle_less_its_direction(double x, double y, double direction)
    {
        var marks = Stills.Body.With((Landmark.BeltMiddle, 200, 200), (Landmark.NeckBase, 200 + x, 200 - y));

        Assert.Equal(0, Math.IEEERemainder(Stills.Value("address-forward-bend", marks) - (90 - (direction / Degree)), 360), 1e-5);
    }

    [Theory]
    [InlineData(2, 1, 1, 2, 3, 2, 45)]
    [InlineData(3, 2, 2, 1, 1, 2, 90)]
    [InlineData(1, 2, 3, 2, 2, 1, 45)]
    public void A_corner_is_the_interior_angle(double x1, double y1, double x2, double y2, double x3, double y3, double angle)
    {
        var marks = Stills.Body.With((Landmark.LeadElbow, x1, y1), (Landmark.LeadWrist, x2, y2), (Landmark.ShaftHigh, x2, y2), (Landmark.ShaftLow, x3, y3));

        Assert.Equal(angle, Stills.Value("lag-angle", marks), 1e-5);
    }

    private static void RisesBy(double dip, double strike, (double East, double North, double Up)[] points)
    {
        var down = (strike + 90) * Degree;
        var level = Stills.Body.With((Landmark.Ball, 500, 0), (Landmark.TrailElbow, 0, 0));
        foreach (var (one, other) in new[] { (0, 1), (1, 2), (2, 0) })
        {
            var (a, b) = (Seen(points[one]), Seen(points[other]));
            var marks = Stills.Body.With((Landmark.ShaftHigh, a.X, a.Y), (Landmark.ShaftLow, b.X, b.Y));
            Assert.Equal(dip, Stills.Value("shaft-over-plane", marks, level), 1e-6);
        }

        Pixel Seen((double East, double North, double Up) point) => new((point.East * Math.Sin(down)) + (point.North * Math.Cos(down)), -point.Up);
    }
}
