using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Media;

/// <summary>Somebody's word that stills and clips of a student may be kept: for a minor the guardian's. A withdrawn one stays, with its end.</summary>
public sealed class MediaConsent
{
    private MediaConsent()
    {
    }

    public Guid Id { get; private set; }

    public StudentId StudentId { get; private set; }

    /// <summary>Who gave it, by name.</summary>
    public string GivenBy { get; private set; } = "";

    public LocalDate GivenOn { get; private set; }

    public AccountId RecordedBy { get; private set; }

    public Instant RecordedAt { get; private set; }

    /// <summary>When it ended, or null while it stands.</summary>
    public Instant? WithdrawnAt { get; private set; }

    /// <summary>Who wrote the end down.</summary>
    public AccountId? WithdrawnBy { get; private set; }

    /// <summary>Consent as told to the practice.</summary>
    public static MediaConsent Give(Guid id, StudentId student, string givenBy, LocalDate on, AccountId by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(givenBy);
        return new MediaConsent { Id = id, StudentId = student, GivenBy = givenBy.Trim(), GivenOn = on, RecordedBy = by, RecordedAt = now };
    }

    /// <summary>It stands no longer; a second time changes nothing.</summary>
    public void Withdraw(AccountId by, Instant now)
    {
        if (WithdrawnAt is null) (WithdrawnAt, WithdrawnBy) = (now, by);
    }
}
