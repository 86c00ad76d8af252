using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Measuring.Landmarks;
using static CoachOffice.Domain.Measuring.Landmarks.Landmark;

namespace CoachOffice.SeedDemo.Builders;

/// <summary>Stills of an invented swing with a driver, built from the values they show: nothing here is read from a picture.</summary>
public static class AStickFigure
{
    /// <summary>Length of the stick that lies at the toes, in cm.</summary>
    public const double KnownLengthCm = 100;

    private const double Degree = Math.PI / 180;
    private const double HeadAtAddress = -5.5;
    private const double Elbow = 22;
    private static readonly (double, double) BallFaceOn = (14, 2);
    private static readonly (double Toward, double Up) BallDownTheLine = (80, 2);

    /// <summary>Each still, in the order of the swing.</summary>
    public static IReadOnlyList<StickStill> Swing { get; } = [Address(), Top(), ArmLevel(), Impact(), AddressDownTheLine(), ArmLevelDownTheLine(), ImpactDownTheLine()];

    /// <summary>One of them.</summary>
    public static StickStill At(View view, Moment moment) => Swing.Single(s => s.View == view && s.Moment == moment);

    private static StickStill Address() => FaceOn(
        Moment.Address,
        new() { ["address-spine-tilt"] = 8, ["ball-forward-of-centre"] = 14, ["stance-width"] = 1.2 },
        [
            .. Spine((1, 95), 48, -8), (HeadMiddle, (HeadAtAddress, 166)), .. Pelvis(1, 90), (LeadHeel, (24, 3)), (TrailHeel, (-24, 3)),
            (LeadShoulder, (14.5, 138)), (TrailShoulder, (-25.5, 134)),
        ]);

    private static StickStill Top() => FaceOn(
        Moment.Top,
        new() { ["top-spine-tilt"] = 9, ["backswing-head-shift"] = -4, ["backswing-pelvis-shift"] = -2 },
        [.. Spine((-1, 96), 48, -9), (HeadMiddle, (HeadAtAddress - 4, 165)), .. Pelvis(-1, 91)]);

    private static StickStill ArmLevel() => FaceOn(
        Moment.LeadArmParallel,
        new() { ["downswing-head-shift"] = 3, ["head-drift"] = -1, ["lag-angle"] = 85 },
        [(HeadMiddle, (HeadAtAddress - 1, 163)), (LeadElbow, (10, 120)), (LeadWrist, (-15, 120)), (ShaftHigh, From((-15, 120), 5, 85)), (ShaftLow, From((-15, 120), 60, 85))]);

    private static StickStill Impact() => FaceOn(
        Moment.Impact,
        new() { ["impact-spine-tilt"] = 24, ["impact-head-behind-ball"] = 21, ["impact-shaft-lean"] = 3, ["downswing-pelvis-shift"] = 9 },
        [.. Spine((10, 97), 48, -24), (HeadMiddle, (-7, 160)), .. Pelvis(10, 92), (ShaftLow, (13, 15)), (ShaftHigh, Up((13, 15), 75, 3))]);

    private static StickStill AddressDownTheLine() => DownTheLine(
        Moment.Address,
        new() { ["address-forward-bend"] = 38, ["ball-distance"] = 15 },
        [.. Spine((0, 98), 50, 38), (Seat, (-15, 92)), (TrailElbow, (Elbow, 100)), (ClubButt, (40, 75)), (Thigh, From((40, 75), 15, 200))]);

    private static StickStill ArmLevelDownTheLine() => DownTheLine(
        Moment.LeadArmParallel,
        new() { ["shaft-over-plane"] = 4 },
        [(ShaftHigh, (25, 115)), (ShaftLow, From((25, 115), 70, 180 - PlaneAtAddress - 4))]);

    private static StickStill ImpactDownTheLine() => DownTheLine(
        Moment.Impact,
        new() { ["forward-bend-change"] = -5, ["pelvis-toward-ball"] = 2 },
        [.. Spine((2, 99), 50, 33), (Seat, (-13, 93))]);

    private static double PlaneAtAddress => Math.Atan2(100 - BallDownTheLine.Up, BallDownTheLine.Toward - Elbow) / Degree;

    private static StickStill FaceOn(Moment moment, Dictionary<string, double> truth, (Landmark, (double, double))[] points) => Still(View.FaceOn, moment, truth, [(Ball, BallFaceOn), .. points]);

    private static StickStill DownTheLine(Moment moment, Dictionary<string, double> truth, (Landmark, (double, double))[] points) => Still(View.DownTheLine, moment, truth, [(Ball, BallDownTheLine), .. points]);

    private static StickStill Still(View view, Moment moment, Dictionary<string, double> truth, (Landmark Landmark, (double, double) At)[] points) => new()
    {
        View = view,
        Moment = moment,
        Truth = truth,
        Points = new[] { (PlumbTop, (-85d, 200d)), (PlumbBottom, (-85, 12)), (LengthStart, (-KnownLengthCm / 2, -6)), (LengthEnd, (KnownLengthCm / 2, -6)) }
            .Concat(points.Select(p => (p.Landmark, p.At))).ToDictionary(p => p.Item1, p => (p.Item2.Item1, p.Item2.Item2)),
    };

    private static (Landmark, (double, double))[] Spine((double, double) belt, double length, double lean) => [(BeltMiddle, belt), (NeckBase, Up(belt, length, lean))];

    private static (Landmark, (double, double))[] Pelvis(double middle, double up) => [(LeadHip, (middle + 16, up + 1)), (TrailHip, (middle - 16, up - 1))];

    // Leaning from upright, toward the target or ball.
    private static (double, double) Up((double Toward, double Up) foot, double length, double lean) => From(foot, length, 90 - lean);

    // Counted from the level toward the target or ball, upward.
    private static (double, double) From((double Toward, double Up) foot, double length, double angle) =>
        (foot.Toward + (length * Math.Cos(angle * Degree)), foot.Up + (length * Math.Sin(angle * Degree)));
}
