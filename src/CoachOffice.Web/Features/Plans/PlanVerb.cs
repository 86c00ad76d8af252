using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Web.Features.Plans;

/// <summary>One thing a coach does to a plan.</summary>
/// <param name="Sentence">Said when it is done.</param>
/// <param name="Run">Does it; an empty list means done.</param>
internal sealed record PlanVerb(string Sentence, Func<PlanId, PlanPost, Actor, Task<IReadOnlyList<Refusal>>> Run);
