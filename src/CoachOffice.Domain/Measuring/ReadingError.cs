namespace CoachOffice.Domain.Measuring;

/// <summary>
/// The two parts of a reading's standard error, in the measure's unit: <see cref="Setup"/> (camera, marking, device), which more swings do not shrink,
/// and <see cref="Swing"/>, the scatter of one swing, reading included.
/// </summary>
/// <param name="Unit">The measure's unit.</param>
/// <param name="Setup">The part more swings do not shrink; 0 or more.</param>
/// <param name="Swing">The scatter of one swing; 0 or more.</param>
public sealed record ReadingError(Unit Unit, double Setup, double Swing)
{
    /// <summary>An eye's reading is taken to err twice as much as an instrument's (own judgement).</summary>
    private const double Eye = 2;

    /// <summary>A usual downswing lasts .27 s (Grober and Cholewicki 2006); used for the frame-rate term of a tempo whose times are not known.</summary>
    private const double UsualDownswingSeconds = 0.27;

    /// <summary>
    /// The error of a measure as it was taken: doubled by eye. With a known frame rate a time's set-up part is the frame's own width instead of the usual one,
    /// and a tempo gains the width of its frames in quadrature.
    /// </summary>
    public static ReadingError Of(Measure measure, MeasuredValue taken) => Of(measure, taken, new Quantity(UsualDownswingSeconds, Unit.Second));

    /// <summary>The same for a tempo made of two times, the second of which is given.</summary>
    public static ReadingError Of(Measure measure, MeasuredValue taken, Quantity downswing)
    {
        ArgumentNullException.ThrowIfNull(measure);
        ArgumentNullException.ThrowIfNull(taken);
        var factor = taken.Instrument == Instrument.Eye ? Eye : 1;
        var frame = FrameError(measure, taken, downswing);
        var setup = frame > 0 && measure.Unit == Unit.Second ? frame * factor : Math.Sqrt(Square(measure.SetupError * factor) + Square(frame));
        return new ReadingError(measure.Unit, setup, measure.SwingError * factor);
    }

    /// <summary>The standard error of the mean of this many different swings: the root of setup squared plus swing squared over n.</summary>
    public Quantity OfMean(int readings)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(readings, 1);
        return new Quantity(Math.Sqrt(Square(Setup) + (Square(Swing) / readings)), Unit);
    }

    /// <summary>The error of a sum of independently read parts.</summary>
    public static ReadingError OfSum(IEnumerable<ReadingError> parts)
    {
        var all = parts.ToList();
        return new ReadingError(all[0].Unit, Math.Sqrt(all.Sum(p => Square(p.Setup))), Math.Sqrt(all.Sum(p => Square(p.Swing))));
    }

    private static double FrameError(Measure measure, MeasuredValue taken, Quantity downswing)
    {
        if (taken.FrameRate is not { } framesPerSecond || framesPerSecond <= 0 || !measure.Instruments.Contains(Instrument.Video)) return 0;
        if (measure.Unit == Unit.Second) return Picked(Math.Sqrt(2) / framesPerSecond);
        return measure.Derived is { Kind: DerivationKind.Ratio } ? TempoFrameError(taken.Value.Value, framesPerSecond, downswing) : 0;
    }

    /// <summary>A tempo rests on three frames (start, top, impact), each known to its own width: R/f * sqrt((1/B^2 + (1/B + 1/D)^2 + 1/D^2)/12), doubled for picking the frame.</summary>
    private static double TempoFrameError(double tempo, double framesPerSecond, Quantity downswing)
    {
        if (tempo <= 0) return 0;
        var perDown = 1 / downswing.In(Unit.Second).Value;
        var perBack = perDown / tempo;
        return tempo * Picked(Math.Sqrt(Square(perBack) + Square(perBack + perDown) + Square(perDown)) / framesPerSecond);
    }

    /// <summary>The standard deviation of an even spread of this width, doubled because a person picks the frame.</summary>
    private static double Picked(double width) => 2 * width / Math.Sqrt(12);

    private static double Square(double value) => value * value;
}
