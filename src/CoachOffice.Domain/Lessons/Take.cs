using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.Domain.Lessons;

/// <summary>One swing of a lesson as one camera saw it, or as one device measured it: where its readings come from and what its clips and stills belong to. The club is the lesson's.</summary>
public sealed class Take
{
    private Take()
    {
    }

    public TakeId Id { get; private set; }

    public LessonId LessonId { get; private set; }

    /// <summary>From where it was seen; never <see cref="Measuring.View.Either"/>, for a camera stands somewhere.</summary>
    public View View { get; private set; }

    /// <summary>Which swing of the lesson, from 1. Takes of different views with the same number show the same swing.</summary>
    public int Swing { get; private set; }

    /// <summary>Frames per second, when known.</summary>
    public double? FrameRate { get; private set; }

    public Instant AddedAt { get; private set; }

    /// <summary>A take of a lesson.</summary>
    public static Take Of(TakeId id, LessonId lesson, View view, int swing, Instant now)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(swing, 1);
        return view == View.Either
            ? throw new ArgumentOutOfRangeException(nameof(view), view, "A take is seen from one side.")
            : new Take { Id = id, LessonId = lesson, View = view, Swing = swing, AddedAt = now };
    }

    /// <summary>Says how fast its video runs; null when nobody knows.</summary>
    public void RunsAt(FramesPerSecond? rate) => FrameRate = rate?.Value;
}
