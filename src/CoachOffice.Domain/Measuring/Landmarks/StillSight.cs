namespace CoachOffice.Domain.Measuring.Landmarks;

/// <summary>
/// A still measured along its plumb line: places as pixels toward the target (or the ball) and upward. A camera turned off square by an angle sees, of a thing whose
/// points lean away from the picture, a part of that lean sidewards: with slope p across the picture and slope d in depth, the slope seen is p cos + d sin of the angle,
/// which is the rule of apparent dips.
/// </summary>
internal sealed class StillSight
{
    private readonly StillMarks _marks;
    private readonly Pixel _up;
    private readonly Pixel _toward;
    private readonly double _cos;
    private readonly double _leanTimesSin;

    /// <param name="still">The still.</param>
    /// <param name="turn">How far the camera is thought to be turned further, in radians.</param>
    /// <param name="lean">How far what is measured leans out of the picture, in radians.</param>
    public StillSight(MarkedStill still, double turn = 0, double lean = 0)
    {
        _marks = still.Marks;
        var plumb = _marks is var m && m.At(Landmark.PlumbTop) is { } top && m.At(Landmark.PlumbBottom) is { } bottom ? top - bottom : new Pixel(0, -1);
        _up = new Pixel(plumb.X / plumb.Length, plumb.Y / plumb.Length);
        var sign = _marks.Toward == PictureSide.Right ? 1 : -1;
        _toward = new Pixel(-_up.Y * sign, _up.X * sign);
        _cos = Math.Cos(turn);
        _leanTimesSin = Math.Tan(lean) * Math.Sin(turn);
    }

    /// <summary>How many cm one pixel is.</summary>
    public double CmPerPixel => _marks.KnownLengthCm!.Value / (Raw(Landmark.LengthEnd) - Raw(Landmark.LengthStart)).Length;

    /// <summary>A landmark's place: X toward the target or ball, Y upward, in pixels.</summary>
    public Pixel this[Landmark landmark]
    {
        get
        {
            var at = Raw(landmark);
            var (along, height) = ((at.X * _toward.X) + (at.Y * _toward.Y), (at.X * _up.X) + (at.Y * _up.Y));
            return new Pixel((along * _cos) + (height * _leanTimesSin), height);
        }
    }

    /// <summary>Midway between two landmarks.</summary>
    public Pixel Between(Landmark one, Landmark other)
    {
        var sum = this[one] + this[other];
        return new Pixel(sum.X / 2, sum.Y / 2);
    }

    /// <summary>How far a landmark lies toward the target from the ball, which no shift between two stills moves; in cm.</summary>
    public double FromBall(Pixel place) => (place.X - this[Landmark.Ball].X) * CmPerPixel;

    private Pixel Raw(Landmark landmark) => _marks.At(landmark)!.Value;
}
