using static CoachOffice.Domain.Measuring.Landmarks.Landmark;

namespace CoachOffice.Domain.Measuring.Landmarks;

/// <summary>
/// Everything that can be read from points on stills. Turns of shoulders and pelvis are not among it, and never their difference: one camera shows a turn only as a
/// foreshortened width, and a separation read so differs from the true one by about 16 degrees (Smith et al. 2016).
/// </summary>
public static class PictureMeasures
{
    // What a usual picture holds in depth, in degrees and cm.
    private const double ForwardBend = 35;
    private const double SideTilt = 10;
    private const double SideTiltAtImpact = 25;
    private const double ClubPlane = 35;
    private const double HeadToward = 5;
    private const double PelvisAlong = 10;
    private const double BallInFront = 60;
    private const double ButtToThigh = 10;
    private const double OpenStance = 10;

    private static readonly (string Id, Moment Moment)[] SideTilts = [("address-spine-tilt", Moment.Address), ("top-spine-tilt", Moment.Top), ("impact-spine-tilt", Moment.Impact)];
    private static readonly Landmark[] Plumb = [PlumbTop, PlumbBottom];
    private static readonly Landmark[] Scaled = [PlumbTop, PlumbBottom, LengthStart, LengthEnd];
    private static readonly Landmark[] FromBall = [.. Scaled, Ball];

    /// <summary>The whole table.</summary>
    public static IReadOnlyList<PictureMeasure> All { get; } = [.. FaceOn(), .. Shifts(), .. DownTheLine()];

    /// <summary>Those of a view at a moment.</summary>
    public static IReadOnlyList<PictureMeasure> For(View view, Moment moment) => [.. All.Where(m => m.View == view && m.Moment == moment)];

    /// <summary>Every landmark that serves some measure of this still, or a later one held against it; in marking order.</summary>
    public static IReadOnlyList<Landmark> LandmarksOf(View view, Moment moment) =>
        [.. For(view, moment).SelectMany(m => m.Needs).Concat(All.Where(m => m.View == view && m.Against == moment).SelectMany(m => m.NeedsThere)).Distinct().Order()];

    private static IEnumerable<PictureMeasure> FaceOn()
    {
        foreach (var (id, moment) in SideTilts)
            yield return Angle(id, View.FaceOn, moment, ForwardBend, [.. Plumb, BeltMiddle, NeckBase], static (s, _) => -Lines.Lean(s[BeltMiddle], s[NeckBase]));
        yield return Length("ball-forward-of-centre", View.FaceOn, Moment.Address, BallInFront, [.. FromBall, LeadHeel, TrailHeel], static (s, _) => -s.FromBall(s.Between(LeadHeel, TrailHeel)));
        yield return Length("impact-head-behind-ball", View.FaceOn, Moment.Impact, BallInFront, [.. FromBall, HeadMiddle], static (s, _) => -s.FromBall(s[HeadMiddle]));
        yield return Angle("impact-shaft-lean", View.FaceOn, Moment.Impact, ClubPlane, [.. Plumb, ShaftHigh, ShaftLow], static (s, _) => Lines.Lean(s[ShaftLow], s[ShaftHigh]));
        yield return Angle("lag-angle", View.FaceOn, Moment.LeadArmParallel, ClubPlane, [LeadElbow, LeadWrist, ShaftHigh, ShaftLow], static (s, _) => Lag(s));
        yield return new PictureMeasure(static (s, _) => Math.Abs(s[LeadHeel].X - s[TrailHeel].X) / Math.Abs(s[LeadShoulder].X - s[TrailShoulder].X), new CameraBias(TurnedDegrees: OpenStance))
        {
            Id = MeasureId.From("stance-width"),
            View = View.FaceOn,
            Moment = Moment.Address,
            Needs = [.. Plumb, LeadHeel, TrailHeel, LeadShoulder, TrailShoulder],
            Unit = Unit.Ratio,
        };
    }

    private static IEnumerable<PictureMeasure> Shifts()
    {
        yield return Shift("backswing-head-shift", Moment.Top, Moment.Address, HeadToward, [HeadMiddle], static s => s[HeadMiddle]);
        yield return Shift("downswing-head-shift", Moment.LeadArmParallel, Moment.Top, HeadToward, [HeadMiddle], static s => s[HeadMiddle]);
        yield return Shift("head-drift", Moment.LeadArmParallel, Moment.Address, HeadToward, [HeadMiddle], static s => s[HeadMiddle]);
        yield return Shift("backswing-pelvis-shift", Moment.Top, Moment.Address, HeadToward, [LeadHip, TrailHip], static s => s.Between(LeadHip, TrailHip));
        yield return Shift("downswing-pelvis-shift", Moment.Impact, Moment.Address, HeadToward, [LeadHip, TrailHip], static s => s.Between(LeadHip, TrailHip));
        yield return Shift("pelvis-toward-ball", Moment.Impact, Moment.Address, PelvisAlong, [Seat], static s => s[Seat]) with { View = View.DownTheLine };
    }

    private static IEnumerable<PictureMeasure> DownTheLine()
    {
        Landmark[] spine = [.. Plumb, BeltMiddle, NeckBase];
        yield return Angle("address-forward-bend", View.DownTheLine, Moment.Address, SideTilt, spine, static (s, _) => Bend(s));
        yield return Angle("forward-bend-change", View.DownTheLine, Moment.Impact, SideTiltAtImpact, spine, static (s, then) => Bend(s) - Bend(then)) with { Against = Moment.Address, NeedsThere = spine };
        yield return Length("ball-distance", View.DownTheLine, Moment.Address, ButtToThigh, [.. Scaled, ClubButt, Thigh], static (s, _) => (s[ClubButt] - s[Thigh]).Length * s.CmPerPixel);
        yield return Angle("shaft-over-plane", View.DownTheLine, Moment.LeadArmParallel, ClubPlane, [.. Plumb, ShaftHigh, ShaftLow], static (s, then) => Lines.Steeper(Lines.Rise(s[ShaftHigh], s[ShaftLow]), Lines.Rise(then[Ball], then[TrailElbow])))
            with
        { Against = Moment.Address, NeedsThere = [.. Plumb, Ball, TrailElbow] };
    }

    private static double Bend(StillSight sight) => Lines.Lean(sight[BeltMiddle], sight[NeckBase]);

    // The shaft's own direction, carried to the wrist: two marks on the shaft need not lie on the line through the wrist.
    private static double Lag(StillSight sight) => Lines.Corner(sight[LeadElbow] - sight[LeadWrist], new Pixel(0, 0), sight[ShaftLow] - sight[ShaftHigh]);

    private static PictureMeasure Angle(string id, View view, Moment moment, double lean, IReadOnlyList<Landmark> needs, Func<StillSight, StillSight, double> value) =>
        new(value, new CameraBias(LeanDegrees: lean)) { Id = MeasureId.From(id), View = view, Moment = moment, Needs = needs, Unit = Unit.Degree };

    private static PictureMeasure Length(string id, View view, Moment moment, double depth, IReadOnlyList<Landmark> needs, Func<StillSight, StillSight, double> value) =>
        new(value, new CameraBias(DepthCm: depth)) { Id = MeasureId.From(id), View = view, Moment = moment, Needs = needs, Unit = Unit.Centimetre };

    private static PictureMeasure Shift(string id, Moment moment, Moment against, double depth, Landmark[] of, Func<StillSight, Pixel> place) =>
        Length(id, View.FaceOn, moment, depth, [.. FromBall, .. of], (s, then) => s.FromBall(place(s)) - then.FromBall(place(then))) with { Against = against, NeedsThere = [.. FromBall, .. of] };
}
