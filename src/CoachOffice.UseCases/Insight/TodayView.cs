using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.UseCases.Insight;

/// <summary>What needs a person now, most urgent first; nothing that needs no action.</summary>
public sealed record TodayView
{
    public required LocalDate Today { get; init; }

    public required IReadOnlyList<SafetyAlert> Safety { get; init; }

    public required TodayRows<TodayLesson> Lessons { get; init; }

    public required TodayRows<TodayDraft> Drafts { get; init; }

    public required TodayRows<TodayRetest> Retests { get; init; }

    public required TodayRows<TodayMessage> Messages { get; init; }

    /// <summary>Students who have been silent through two notes.</summary>
    public required TodayRows<TodaySilence> Silent { get; init; }
}

/// <summary>A pain report nobody has dealt with yet.</summary>
public sealed record SafetyAlert
{
    public required StudentId StudentId { get; init; }

    public required string StudentName { get; init; }

    public required PlanId PlanId { get; init; }

    /// <summary>The report.</summary>
    public required Guid CheckInId { get; init; }

    /// <summary>A sign of an emergency was ticked.</summary>
    public required bool Emergency { get; init; }

    /// <summary>Where, when said.</summary>
    public Region? Region { get; init; }

    /// <summary>When it came in.</summary>
    public required Instant At { get; init; }
}

/// <summary>A lesson record of today.</summary>
public sealed record TodayLesson(LessonId Id, StudentId StudentId, string StudentName, Club Club, bool HasPlan);

/// <summary>A draft nobody has approved yet.</summary>
public sealed record TodayDraft(PlanId Id, StudentId StudentId, string StudentName, Instant MadeAt);

/// <summary>A number to read again.</summary>
/// <param name="Id">The re-test.</param>
/// <param name="StudentId">Whose.</param>
/// <param name="StudentName">Their name.</param>
/// <param name="FaultName">Which number, in words.</param>
/// <param name="DueOn">Since when.</param>
/// <param name="IsSecondLook">One to two weeks after a verdict.</param>
public sealed record TodayRetest(Guid Id, StudentId StudentId, string StudentName, string FaultName, LocalDate DueOn, bool IsSecondLook)
{
    /// <summary>The student practises so often that no day of rest has come since the stage's end: one wants asking for.</summary>
    public bool RestFirst { get; init; }

    /// <summary>The student sent a reading that waits for a look.</summary>
    public bool Answered { get; init; }

    /// <summary>How often the student was asked.</summary>
    public int Asked { get; init; }
}

/// <summary>A message that did not go.</summary>
public sealed record TodayMessage(Guid Id, StudentId? StudentId, string Name, MessageKind Kind, string Problem);

/// <summary>A student who has not answered two notes.</summary>
public sealed record TodaySilence(StudentId StudentId, string StudentName, PlanId PlanId, LocalDate? LastPractice);
