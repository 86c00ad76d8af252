using NodaTime;

namespace CoachOffice.Domain.FollowUps;

/// <summary>The practice's own words for a kind of message, as a template. Never changed: other words are another row, and old ones stay to be read.</summary>
public sealed class MessageWording
{
    private MessageWording()
    {
    }

    public Guid Id { get; private set; }

    public MessageKind Kind { get; private set; }

    /// <summary>One line.</summary>
    public string Subject { get; private set; } = "";

    /// <summary>Without greeting of the program's own: everything above the closing.</summary>
    public string Body { get; private set; } = "";

    public Instant WrittenAt { get; private set; }

    /// <summary>Who wrote it, as shown.</summary>
    public string WrittenBy { get; private set; } = "";

    /// <summary>New words of a kind; checked before.</summary>
    public static MessageWording Of(Guid id, MessageKind kind, LetterWords words, string by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(words);
        return new MessageWording { Id = id, Kind = kind, Subject = words.Subject, Body = words.Body, WrittenBy = by, WrittenAt = now };
    }

    /// <summary>Subject and body.</summary>
    public LetterWords Words => new(Subject, Body);
}
