namespace CoachOffice.Domain.Measuring.Landmarks;

/// <summary>
/// How far a camera that stands off square can move a measure of a usual swing, from the depth the picture does not show (own judgement of the depths, own geometry).
/// A side tilt of a spine bent forward by 35 degrees moves by 3.5 for 5 degrees and 6.9 for 10.
/// </summary>
/// <param name="By5">By up to this when the camera is 5 degrees off.</param>
/// <param name="By10">By up to this when it is 10 degrees off.</param>
public sealed record CameraOffSquare(Quantity By5, Quantity By10)
{
    /// <summary>For what is read from pictures; null for every other measure, and where no depth matters.</summary>
    public static CameraOffSquare? Of(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        var read = PictureMeasures.All.FirstOrDefault(m => m.Id == measure.Id);
        return read is null || read.Unit != measure.Unit || read.UsualMove(5) is not { } five || read.UsualMove(10) is not { } ten ? null : new CameraOffSquare(new Quantity(five, measure.Unit), new Quantity(ten, measure.Unit));
    }
}
