using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>All that decides whether a claimed message goes now, read after the claim.</summary>
public sealed record SendingFacts
{
    public required Message Message { get; init; }

    public required Plan Plan { get; init; }

    public required Student Student { get; init; }

    public required Practice Practice { get; init; }

    /// <summary>Open re-tests of the plan, by due day.</summary>
    public required IReadOnlyList<Retest> Looks { get; init; }

    public required Instant Now { get; init; }

    public required FollowUpDates Dates { get; init; }

    /// <summary>End of the last logged practice, or null.</summary>
    public Instant? LastPractice { get; init; }

    /// <summary>When the last check-in came in, or null.</summary>
    public Instant? LastNote { get; init; }

    /// <summary>Days on which the student is taught.</summary>
    public required IReadOnlyList<LocalDate> Taught { get; init; }

    /// <summary>What went out to the student lately.</summary>
    public required IReadOnlyList<SentBefore> Sent { get; init; }

    /// <summary>What its letter is made of.</summary>
    public required LetterSource Letter { get; init; }

    /// <summary>The practice's own words for it, or the coach's for this one; null: the shipped ones.</summary>
    public LetterWords? Words { get; init; }

    /// <summary>Addresses from which mail came back for good, as hashes.</summary>
    public IReadOnlySet<string> Bounced { get; init; } = new HashSet<string>();

    /// <summary>The practice's day.</summary>
    public LocalDate Today => Dates.DayOf(Now);

    /// <summary>The re-test the message speaks of while it is open.</summary>
    public Retest? Look => Looks.FirstOrDefault(l => l.Id == Message.SubjectId);

    /// <summary>True when the student is under 18 today.</summary>
    public bool IsMinor => Student.BirthDate is { } born && Ages.IsMinor(born, Today);

    /// <summary>How many encouraging messages of any kind went out since the last check-in.</summary>
    public int Unanswered => Sent.Count(s => MessageTraits.IsEncouragement(s.Kind) && s.PlanId == Plan.Id && (LastNote is not { } note || s.At > note));

    /// <summary>Which wording is its turn. A note about practice says how many are unanswered; the week's question only changes.</summary>
    public int Turn => Message.Kind == MessageKind.WeeklyCheckIn ? Sent.Count(s => s.Kind == Message.Kind && s.PlanId == Plan.Id) : Sent.Count(s => s.Kind == MessageKind.PracticeNudge && s.PlanId == Plan.Id && (LastNote is not { } note || s.At > note));
}

/// <summary>A message that went out.</summary>
public sealed record SentBefore(MessageKind Kind, PlanId? PlanId, Instant At);
