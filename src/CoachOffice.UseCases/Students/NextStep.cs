using NodaTime;

namespace CoachOffice.UseCases.Students;

/// <summary>The one thing on top of a student's page.</summary>
/// <param name="Kind">What to do.</param>
/// <param name="Sentence">In words.</param>
/// <param name="Id">Of the plan, re-test or lesson it concerns; null for recording a first lesson.</param>
/// <param name="DueOn">When, where there is a day.</param>
public sealed record NextStep(NextStepKind Kind, string Sentence, Guid? Id = null, LocalDate? DueOn = null);
