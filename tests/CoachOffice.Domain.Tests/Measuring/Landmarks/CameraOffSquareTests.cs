using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Measuring.Landmarks;

namespace CoachOffice.Domain.Tests.Measuring.Landmarks;

public sealed class CameraOffSquareTests
{
    /// <summary>A spine bent forward by 35 degrees seen from 5 and 10 degrees off square: the arc tangent of tan 35 times the sine (own geometry; the trade's figures are 3.4 and 6.9).</summary>
    [Fact]
    public void A_side_tilt_moves_by_what_the_forward_bend_shows_sideways()
    {
        var camera = CameraOffSquare.Of(Lessons.Tilt with { Id = MeasureId.From("impact-spine-tilt") })!;
        Assert.Equal(Math.Atan(Math.Tan(35 * Math.PI / 180) * Math.Sin(5 * Math.PI / 180)) * 180 / Math.PI, camera.By5.Value, 9);
        Assert.Equal(3.4, camera.By5.Value, .15);
        Assert.Equal(6.9, camera.By10.Value, .15);
    }

    [Fact]
    public void What_no_picture_shows_moves_by_nothing_we_know_of()
    {
        Assert.Null(CameraOffSquare.Of(Lessons.Tilt with { Id = MeasureId.From("club-speed") }));
        Assert.Null(CameraOffSquare.Of(Lessons.Tilt with { Id = MeasureId.From("stance-width"), Unit = Unit.Ratio }));
        Assert.Null(CameraOffSquare.Of(Lessons.Tilt with { Unit = Unit.Centimetre }));
    }
}
