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

    public required IReadOnlyList<TodayLesson> Lessons { get; init; }

    public required IReadOnlyList<TodayDraft> Drafts { get; init; }

    public required IReadOnlyList<TodayRetest> Retests { get; init; }

    public required IReadOnlyList<TodayMessage> Messages { get; init; }

    /// <summary>Students who have been silent through two notes.</summary>
    public required IReadOnlyList<TodaySilence> Silent { get; init; }
}

/// <summary>A pain report nobody has dealt with yet.</summary>
/// <param name="StudentId">Whose.</param>
/// <param name="StudentName">Their name.</param>
/// <param name="PlanId">The plan.</param>
/// <param name="CheckInId">The report.</param>
/// <param name="Emergency">A sign of an emergency was ticked.</param>
/// <param name="Region">Where, when said.</param>
/// <param name="At">When it came in.</param>
public sealed record SafetyAlert(StudentId StudentId, string StudentName, PlanId PlanId, Guid CheckInId, bool Emergency, Region? Region, Instant At);

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
public sealed record TodayRetest(Guid Id, StudentId StudentId, string StudentName, string FaultName, LocalDate DueOn, bool IsSecondLook);

/// <summary>A message that did not go.</summary>
public sealed record TodayMessage(Guid Id, StudentId StudentId, string StudentName, MessageKind Kind, string Problem);

/// <summary>A student who has not answered two notes.</summary>
public sealed record TodaySilence(StudentId StudentId, string StudentName, PlanId PlanId, LocalDate? LastPractice);
