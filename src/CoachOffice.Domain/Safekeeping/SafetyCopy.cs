using NodaTime;

namespace CoachOffice.Domain.Safekeeping;

/// <summary>That a backup was tried, and what came of it. It holds nothing of what the backup holds.</summary>
public sealed class SafetyCopy
{
    private SafetyCopy()
    {
    }

    public Guid Id { get; private set; }

    /// <summary>When it was begun.</summary>
    public Instant At { get; private set; }

    /// <summary>Who asked for it, as histories name them.</summary>
    public string By { get; private set; } = "";

    public SafetyCopyState State { get; private set; }

    /// <summary>Name of the backup's folder; empty when none was made.</summary>
    public string Place { get; private set; } = "";

    /// <summary>A sentence; null when all is well.</summary>
    public string? Problem { get; private set; }

    /// <summary>All rows of all tables.</summary>
    public long Rows { get; private set; }

    /// <summary>Stills and clips.</summary>
    public int Files { get; private set; }

    /// <summary>Stills and clips the database names and that the office itself had lost.</summary>
    public int Absent { get; private set; }

    /// <summary>Length of all of it.</summary>
    public long Bytes { get; private set; }

    /// <summary>When it had been brought back aside and compared; null when that failed or was never done.</summary>
    public Instant? ProvedAt { get; private set; }

    /// <summary>A backup that could not be made, or not be brought back.</summary>
    public static SafetyCopy Failed(Guid id, Instant at, string by, string problem) => new() { Id = id, At = at, By = by, State = SafetyCopyState.Failed, Problem = problem };

    /// <summary>One that was made, brought back aside and found the same.</summary>
    public static SafetyCopy Proved(Guid id, Instant at, string by, SafetyCopyContent content, Instant now)
    {
        ArgumentNullException.ThrowIfNull(content);
        return new SafetyCopy
        {
            Id = id,
            At = at,
            By = by,
            State = SafetyCopyState.Proved,
            Place = content.Place,
            Rows = content.Rows,
            Files = content.Files,
            Absent = content.Absent,
            Bytes = content.Bytes,
            ProvedAt = now,
        };
    }
}
