using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.FollowUps;

/// <summary>Something due to a person: facts only, never a body or a link. Written in the transaction of what causes it, claimed by lease, sent once.</summary>
public sealed class Message
{
    private Message()
    {
    }

    public Guid Id { get; private set; }

    public MessageKind Kind { get; private set; }

    /// <summary>Whom it is about; null when it is about no single student.</summary>
    public StudentId? StudentId { get; private set; }

    /// <summary>The plan it belongs to; null when it is the office's own, such as an invitation.</summary>
    public PlanId? PlanId { get; private set; }

    /// <summary>The re-test, booking or other thing it speaks of, or null when that is the plan itself.</summary>
    public Guid? SubjectId { get; private set; }

    /// <summary>Kind, student, subject and due day: the same cause twice is one message. Unique.</summary>
    public string OnceKey { get; private set; } = "";

    public Instant DueAt { get; private set; }

    public MessageState State { get; private set; }

    /// <summary>True when it goes out whatever the hour: a plan just approved, or a coach's own "send now".</summary>
    public bool AtOnce { get; private set; }

    /// <summary>Why it was written, for the coach.</summary>
    public string Reason { get; private set; } = "";

    public int Attempts { get; private set; }

    public Instant? LeaseUntil { get; private set; }

    public string? ClaimedBy { get; private set; }

    /// <summary>When its handing over began; still set after a crash in the middle, so nobody knows whether it arrived.</summary>
    public Instant? SendingAt { get; private set; }

    public Instant? SentAt { get; private set; }

    /// <summary>A code of the last failure or of why it was skipped; no addresses.</summary>
    public string? LastProblem { get; private set; }

    /// <summary>A coach's own words for this one message, as a template with its subject on the first line; null: those of its kind.</summary>
    public string? OwnWords { get; private set; }

    public Instant CreatedAt { get; private set; }

    /// <summary>A message due later.</summary>
    public static Message Due(Guid id, DueMessage due, Instant now)
    {
        ArgumentNullException.ThrowIfNull(due);
        return new Message
        {
            Id = id,
            Kind = due.Kind,
            StudentId = due.StudentId,
            PlanId = due.PlanId,
            SubjectId = due.SubjectId,
            OnceKey = due.OnceKey,
            DueAt = due.DueAt,
            AtOnce = due.AtOnce,
            Reason = due.Reason,
            CreatedAt = now,
        };
    }

    /// <summary>The Message-ID header's left part: the same at every attempt.</summary>
    public string StableName => $"{Terms.Of(Kind)}.{Id:N}";

    /// <summary>It does not go by itself: a coach says yes to it first.</summary>
    public void AwaitApproval()
    {
        if (State == MessageState.Waiting) State = MessageState.AwaitsApproval;
    }

    /// <summary>A coach's own words for this one; null: those of its kind again.</summary>
    public void Say(string? words)
    {
        if (State is not (MessageState.Sent or MessageState.Skipped)) OwnWords = words;
    }

    /// <summary>The plan is paused.</summary>
    public void Hold()
    {
        if (State == MessageState.Waiting) State = MessageState.Held;
    }

    /// <summary>The plan goes on; due again no earlier than now.</summary>
    public void Release(Instant notBefore)
    {
        if (State is not (MessageState.Held or MessageState.NeedsAttention or MessageState.Unknown)) return;
        (State, DueAt, Attempts, LeaseUntil, ClaimedBy, SendingAt) = (MessageState.Waiting, Instant.Max(DueAt, notBefore), 0, null, null, null);
    }

    /// <summary>It will not be sent.</summary>
    public void Skip(string why)
    {
        if (State is MessageState.Sent) return;
        (State, LastProblem, LeaseUntil, ClaimedBy) = (MessageState.Skipped, why, null, null);
    }

    /// <summary>Due at another time.</summary>
    public void MoveTo(Instant dueAt) => DueAt = dueAt;
}
