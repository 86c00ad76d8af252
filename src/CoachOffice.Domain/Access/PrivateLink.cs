using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Access;

/// <summary>A capability: whoever holds the token may do one thing for one student: with one plan, or with the lessons. Only the token's SHA-256 is stored.</summary>
public sealed class PrivateLink
{
    private PrivateLink()
    {
    }

    public Guid Id { get; private set; }

    /// <summary>SHA-256 of the token's bytes, lower hex. Unique.</summary>
    public string TokenSha256 { get; private set; } = "";

    public StudentId StudentId { get; private set; }

    /// <summary>What the holder may do; a token of one kind never opens the other.</summary>
    public LinkPurpose Purpose { get; private set; }

    /// <summary>The plan it opens; null when it opens the student's lessons.</summary>
    public PlanId? PlanId { get; private set; }

    /// <summary>Which messages a stop link speaks of first: those of the mail it stood in. Null on links for other things.</summary>
    public MessagePurpose? Stops { get; private set; }

    public Instant IssuedAt { get; private set; }

    public Instant ExpiresAt { get; private set; }

    public Instant? RevokedAt { get; private set; }

    public Instant? LastOpenedAt { get; private set; }

    /// <summary>A new link of one student that is good until it expires or is revoked: for a plan, or for the lessons when there is none.</summary>
    public static PrivateLink Issue(Guid id, string tokenSha256, StudentId student, PlanId? plan, Interval life, LinkPurpose purpose = LinkPurpose.Plan) => new()
    {
        Id = id,
        TokenSha256 = tokenSha256,
        StudentId = student,
        PlanId = plan,
        IssuedAt = life.Start,
        ExpiresAt = life.End,
        Purpose = purpose,
    };

    /// <summary>A new link to stop messages of one student, those of a purpose first.</summary>
    public static PrivateLink IssueStop(Guid id, string tokenSha256, StudentId student, MessagePurpose stops, Interval life)
    {
        var link = Issue(id, tokenSha256, student, null, life, LinkPurpose.StopMessages);
        link.Stops = stops;
        return link;
    }

    /// <summary>True while it opens anything.</summary>
    public bool IsOpenAt(Instant now) => RevokedAt is null && now < ExpiresAt;

    /// <summary>Ends it for good.</summary>
    public void Revoke(Instant now) => RevokedAt ??= now;

    /// <summary>Notes a use.</summary>
    public void Opened(Instant now) => LastOpenedAt = now;
}
