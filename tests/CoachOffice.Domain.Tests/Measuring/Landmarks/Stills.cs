using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Measuring.Landmarks;

namespace CoachOffice.Domain.Tests.Measuring.Landmarks;

/// <summary>Marked stills for tests: in a picture whose upright is upright, whose right is toward the target, and 4 pixels of which are a cm.</summary>
internal static class Stills
{
    public const double PixelsPerCm = 4;

    /// <summary>Every landmark somewhere a body could have it.</summary>
    public static StillMarks Body { get; } = new()
    {
        KnownLengthCm = 100,
        Marks =
        [
            Of(Landmark.PlumbTop, 60, 90), Of(Landmark.PlumbBottom, 60, 860), Of(Landmark.LengthStart, 300, 905), Of(Landmark.LengthEnd, 700, 905), Of(Landmark.Ball, 560, 890),
            Of(Landmark.LeadHeel, 580, 850), Of(Landmark.TrailHeel, 430, 852), Of(Landmark.LeadHip, 585, 520), Of(Landmark.TrailHip, 450, 530), Of(Landmark.Seat, 400, 540),
            Of(Landmark.BeltMiddle, 515, 510), Of(Landmark.NeckBase, 480, 300), Of(Landmark.HeadMiddle, 470, 230), Of(Landmark.LeadShoulder, 570, 330), Of(Landmark.TrailShoulder, 410, 345),
            Of(Landmark.LeadElbow, 590, 420), Of(Landmark.TrailElbow, 470, 450), Of(Landmark.LeadWrist, 560, 540), Of(Landmark.ShaftHigh, 566, 560), Of(Landmark.ShaftLow, 540, 780),
            Of(Landmark.ClubButt, 552, 530), Of(Landmark.Thigh, 500, 560),
        ],
    };

    public static Mark Of(Landmark landmark, double x, double y) => new(landmark, new Pixel(x, y));

    /// <summary>The same with some marks elsewhere, or taken away where none is given.</summary>
    public static StillMarks With(this StillMarks marks, params (Landmark Landmark, double X, double Y)[] moved) =>
        marks with { Marks = [.. marks.Marks.Where(m => moved.All(x => x.Landmark != m.Landmark)), .. moved.Select(m => Of(m.Landmark, m.X, m.Y))] };

    public static StillMarks Without(this StillMarks marks, params Landmark[] gone) => marks with { Marks = [.. marks.Marks.Where(m => !gone.Contains(m.Landmark))] };

    /// <summary>Every mark carried elsewhere.</summary>
    public static StillMarks Carried(this StillMarks marks, Func<Pixel, Pixel> to) => marks with { Marks = [.. marks.Marks.Select(m => m with { At = to(m.At) })] };

    /// <summary>One value of a still, held against itself moved for an earlier moment unless told otherwise.</summary>
    public static PictureReading Read(string measure, StillMarks marks, StillMarks? earlier = null)
    {
        var known = PictureMeasures.All.Single(m => m.Id.Value == measure);
        var still = new MarkedStill(known.View, known.Moment, marks);
        return PictureReadings.Of(still, moment => new MarkedStill(known.View, moment, earlier ?? marks)).Single(r => r.Measure == known);
    }

    public static double Value(string measure, StillMarks marks, StillMarks? earlier = null) => Read(measure, marks, earlier).Value!.Value.Value;
}
