using NodaTime;

namespace CoachOffice.Domain.Lessons;

/// <summary>
/// Remembers that a sheet arrived. The office gives every opened sheet an id; what comes a second time under the same id with the same content was kept the first time,
/// also when somebody else saved the lesson in between.
/// </summary>
public sealed class SheetSend
{
    private SheetSend()
    {
    }

    public Guid Id { get; private set; }

    public LessonId LessonId { get; private set; }

    /// <summary>SHA-256 of what was sent.</summary>
    public string Content { get; private set; } = "";

    public Instant At { get; private set; }

    /// <summary>A sheet has arrived.</summary>
    public static SheetSend Of(Guid id, LessonId lesson, string content, Instant now) => new() { Id = id, LessonId = lesson, Content = content, At = now };
}
