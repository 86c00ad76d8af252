using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>What stands around a plan's draft.</summary>
internal sealed record DraftSurroundings(Instant MadeAt, string Rulebook, LocalDate HeldOn, Club Club, Student Student, bool IsInForce);
