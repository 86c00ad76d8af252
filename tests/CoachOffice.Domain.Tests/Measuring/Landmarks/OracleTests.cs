using CoachOffice.Domain.Measuring.Landmarks;
using CsCheck;
using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;

namespace CoachOffice.Domain.Tests.Measuring.Landmarks;

/// <summary>Random points, read by us and by NetTopologySuite.</summary>
public sealed class OracleTests
{
    private static readonly Gen<Coordinate> Point = Gen.Select(Gen.Double[0, 2000], Gen.Double[0, 2000], (x, y) => new Coordinate(x, y));

    [Fact]
    public void Leans_are_its_directions() =>
        Gen.Select(Point, Point).Where((a, b) => a.Distance(b) > 1).Sample((belt, neck) =>
        {
            var marks = Stills.Body.With((Landmark.BeltMiddle, belt.X, belt.Y), (Landmark.NeckBase, neck.X, neck.Y));
            // Its second axis points upward.
            var direction = AngleUtility.ToDegrees(AngleUtility.Angle(new Coordinate(belt.X, -belt.Y), new Coordinate(neck.X, -neck.Y)));
            Assert.Equal(0, Math.IEEERemainder(Stills.Value("address-forward-bend", marks) - (90 - direction), 360), 1e-9);
            Assert.Equal(0, Math.IEEERemainder(Stills.Value("top-spine-tilt", marks) + (90 - direction), 360), 1e-9);
        });

    [Fact]
    public void Corners_are_its_angles_between() =>
        Gen.Select(Point, Point, Point).Where((a, b, c) => a.Distance(b) > 1 && b.Distance(c) > 1).Sample((elbow, wrist, low) =>
        {
            var marks = Stills.Body.With((Landmark.LeadElbow, elbow.X, elbow.Y), (Landmark.LeadWrist, wrist.X, wrist.Y), (Landmark.ShaftHigh, wrist.X, wrist.Y), (Landmark.ShaftLow, low.X, low.Y));
            Assert.Equal(AngleUtility.ToDegrees(AngleUtility.AngleBetween(elbow, wrist, low)), Stills.Value("lag-angle", marks), 1e-6);
        });

    [Fact]
    public void Distances_are_its_distances_in_the_known_length() =>
        Gen.Select(Point, Point, Point, Point).Where((a, b, _, _) => a.Distance(b) > PictureReadings.ShortestLine).Sample((start, end, butt, thigh) =>
        {
            var marks = Stills.Body.With((Landmark.LengthStart, start.X, start.Y), (Landmark.LengthEnd, end.X, end.Y), (Landmark.ClubButt, butt.X, butt.Y), (Landmark.Thigh, thigh.X, thigh.Y));
            Assert.Equal(butt.Distance(thigh) * 100 / start.Distance(end), Stills.Value("ball-distance", marks), 1e-6);
        });

    /// <summary>A rolled, shifted and resized picture says the same, and so does a mirrored one once it is said where the target lies; every measure of the table.</summary>
    [Fact]
    public void Neither_roll_nor_size_nor_a_mirror_changes_a_value() =>
        Gen.Select(Gen.Double[-0.7, 0.7], Gen.Double[0.4, 3], Gen.Double[-300, 300], Gen.Bool).Sample((roll, scale, shift, mirrored) =>
        {
            var carry = AffineTransformation.RotationInstance(roll).Scale(scale, scale).Translate(shift, -shift);
            if (mirrored) carry = carry.Reflect(0, 0, 0, 1);
            var taken = (Stills.Body with { Toward = mirrored ? PictureSide.Left : PictureSide.Right }).Carried(p =>
            {
                var at = carry.Transform(new Coordinate(p.X, p.Y), new Coordinate());
                return new Pixel(at.X, at.Y);
            });

            Assert.All(PictureMeasures.All, m => Assert.Equal(Stills.Value(m.Id.Value, Stills.Body, Earlier), Stills.Value(m.Id.Value, taken, Earlier), 1e-6));
        });

    private static StillMarks Earlier { get; } = Stills.Body.With((Landmark.HeadMiddle, 480, 228), (Landmark.LeadHip, 577, 521), (Landmark.Seat, 398, 540), (Landmark.NeckBase, 500, 302));
}
