using NodaTime;

namespace CoachOffice.Domain.Lessons;

/// <summary>Remembers that a sheet arrived: the office gives every opened sheet an id, and what comes a second time under the same id was kept the first time.</summary>
public sealed class SheetSend
{
    private SheetSend()
    {
    }

    public Guid Id { get; private set; }

    public LessonId LessonId { get; private set; }

    public Instant At { get; private set; }

    /// <summary>A sheet has arrived.</summary>
    public static SheetSend Of(Guid id, LessonId lesson, Instant now) => new() { Id = id, LessonId = lesson, At = now };
}
