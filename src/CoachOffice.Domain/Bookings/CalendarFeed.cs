using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>
/// An address at which a calendar program looks up one person's lessons: a coach's own, or a student's own. Whoever knows the address may read;
/// only the SHA-256 of the secret in it is stored, so it is shown once.
/// </summary>
public sealed class CalendarFeed
{
    private CalendarFeed()
    {
    }

    public Guid Id { get; private set; }

    /// <summary>SHA-256 of the token's bytes, lower hex. Unique.</summary>
    public string TokenSha256 { get; private set; } = "";

    /// <summary>Whose lessons as a coach; null for a student's.</summary>
    public AccountId? CoachId { get; private set; }

    /// <summary>Whose lessons as a student; null for a coach's.</summary>
    public StudentId? StudentId { get; private set; }

    public Instant IssuedAt { get; private set; }

    public Instant? RevokedAt { get; private set; }

    /// <summary>When a program last asked, to the hour.</summary>
    public Instant? LastOpenedAt { get; private set; }

    /// <summary>A coach's calendar.</summary>
    public static CalendarFeed Of(Guid id, string tokenSha256, AccountId coach, Instant now) => new() { Id = id, TokenSha256 = tokenSha256, CoachId = coach, IssuedAt = now };

    /// <summary>A student's calendar.</summary>
    public static CalendarFeed Of(Guid id, string tokenSha256, StudentId student, Instant now) => new() { Id = id, TokenSha256 = tokenSha256, StudentId = student, IssuedAt = now };

    /// <summary>Ends it for good.</summary>
    public void Revoke(Instant now) => RevokedAt ??= now;
}
