using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Measuring.Landmarks;
using CoachOffice.Domain.Students;

namespace CoachOffice.Domain.Tests.Measuring.Landmarks;

public sealed class PictureReadingTests
{
    [Fact]
    public void Signs_are_those_of_the_trade()
    {
        // Right of this picture is the target, or the ball seen down the line.
        Assert.True(Stills.Value("impact-spine-tilt", Stills.Body) > 0, "The neck is away from the target of the belt.");
        Assert.Equal((560 - 505) / Stills.PixelsPerCm, Stills.Value("ball-forward-of-centre", Stills.Body), 1e-9);
        Assert.Equal((560 - 470) / Stills.PixelsPerCm, Stills.Value("impact-head-behind-ball", Stills.Body), 1e-9);
        Assert.True(Stills.Value("impact-shaft-lean", Stills.Body) > 0, "The handle is toward the target of the head.");
        Assert.Equal(150 / 160.0, Stills.Value("stance-width", Stills.Body), 1e-9);
        Assert.Equal(5, Stills.Value("backswing-head-shift", Stills.Body.With((Landmark.HeadMiddle, 490, 230)), Stills.Body), 1e-9);
        Assert.Equal(-5, Stills.Value("pelvis-toward-ball", Stills.Body.With((Landmark.Seat, 380, 540)), Stills.Body), 1e-9);
    }

    [Fact]
    public void A_camera_that_was_moved_sideways_moves_no_shift_for_the_ball_moved_with_it()
    {
        var moved = Stills.Body.Carried(p => new Pixel(p.X + 37, p.Y - 12));

        Assert.Equal(0, Stills.Value("downswing-pelvis-shift", moved, Stills.Body), 1e-9);
        Assert.Equal(0, Stills.Value("pelvis-toward-ball", moved, Stills.Body), 1e-9);
    }

    [Fact]
    public void A_steeper_shaft_is_positive_and_which_end_is_marked_first_does_not_matter()
    {
        // At address the line rises from the ball by 45 degrees, away from it.
        var address = Stills.Body.With((Landmark.Ball, 600, 800), (Landmark.TrailElbow, 300, 500));
        var steep = Stills.Body.With((Landmark.ShaftHigh, 500, 400), (Landmark.ShaftLow, 400, 400 - (100 * Math.Tan(52 * Math.PI / 180))));
        var ends = steep.With((Landmark.ShaftLow, 500, 400), (Landmark.ShaftHigh, 400, 400 - (100 * Math.Tan(52 * Math.PI / 180))));

        Assert.Equal(7, Stills.Value("shaft-over-plane", steep, address), 1e-9);
        Assert.Equal(7, Stills.Value("shaft-over-plane", ends, address), 1e-9);
        Assert.Equal(55, Stills.Value("shaft-over-plane", Stills.Body.With((Landmark.ShaftHigh, 500, 400), (Landmark.ShaftLow, 517.6326980708465, 300)), address), 1e-6);
    }

    [Theory]
    [InlineData(Hand.Right, PictureSide.Right)]
    [InlineData(Hand.Left, PictureSide.Left)]
    public void The_target_of_a_picture_not_mirrored_follows_the_hand(Hand hand, PictureSide side) => Assert.Equal(side, StillMarks.UsualSide(hand));

    [Fact]
    public void A_left_handed_players_picture_reads_the_same_once_its_side_is_said()
    {
        var left = (Stills.Body with { Toward = PictureSide.Left }).Carried(p => new Pixel(1000 - p.X, p.Y));

        Assert.All(PictureMeasures.All, m => Assert.Equal(Stills.Value(m.Id.Value, Stills.Body), Stills.Value(m.Id.Value, left), 1e-9));
        Assert.Equal(-Stills.Value("top-spine-tilt", Stills.Body), Stills.Value("top-spine-tilt", left with { Toward = PictureSide.Right }), 1e-9);
    }

    [Fact]
    public void What_is_missing_is_named_with_its_moment()
    {
        Missing("top-spine-tilt", Stills.Body.Without(Landmark.NeckBase), new MissingMark(Moment.Top, Landmark.NeckBase));
        Missing("top-spine-tilt", Stills.Body.With((Landmark.PlumbBottom, 62, 99)), new MissingMark(Moment.Top, Landmark.PlumbBottom));
        Missing("ball-distance", Stills.Body with { KnownLengthCm = null }, new MissingMark(Moment.Address, Landmark.LengthEnd));
        Missing("ball-distance", Stills.Body.With((Landmark.LengthEnd, 301, 905)), new MissingMark(Moment.Address, Landmark.LengthEnd));
        Assert.Equal([new MissingMark(Moment.Address, Landmark.HeadMiddle)], Stills.Read("backswing-head-shift", Stills.Body, Stills.Body.Without(Landmark.HeadMiddle)).Missing);
        var alone = PictureReadings.Of(new MarkedStill(View.DownTheLine, Moment.LeadArmParallel, Stills.Body), _ => null);
        Assert.Equal([new MissingMark(Moment.Address, null)], alone.Single().Missing);
    }

    [Fact]
    public void Two_marks_on_one_place_that_leave_no_number_are_missing_and_never_infinite()
    {
        var flat = Stills.Body.With((Landmark.LeadShoulder, 500, 330), (Landmark.TrailShoulder, 500, 345));

        Assert.Null(Stills.Read("stance-width", flat).Value);
        Assert.NotEmpty(Stills.Read("stance-width", flat).Missing);
    }

    [Fact]
    public void No_turn_is_read_from_one_camera_and_never_a_difference_of_turns() =>
        Assert.DoesNotContain(PictureMeasures.All, m => m.Id.Value.Contains("turn", StringComparison.Ordinal) || m.Id.Value.Contains("open", StringComparison.Ordinal) || m.Id.Value.Contains("aim", StringComparison.Ordinal));

    [Fact]
    public void A_still_asks_for_all_that_itself_and_later_ones_need()
    {
        var address = PictureMeasures.LandmarksOf(View.DownTheLine, Moment.Address);

        Assert.Contains(Landmark.TrailElbow, address);
        Assert.Contains(Landmark.Seat, address);
        Assert.Equal(address.Order(), address);
        Assert.Empty(PictureMeasures.LandmarksOf(View.FaceOn, Moment.Finish));
    }

    private static void Missing(string measure, StillMarks marks, MissingMark missing)
    {
        var reading = Stills.Read(measure, marks);
        Assert.Equal((null, null, null), (reading.Value, reading.Click, reading.Camera));
        Assert.Equal([missing], reading.Missing);
    }
}
