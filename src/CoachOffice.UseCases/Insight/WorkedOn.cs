using NodaTime;

namespace CoachOffice.UseCases.Insight;

/// <summary>A time in which a plan worked on a measure.</summary>
/// <param name="From">First day.</param>
/// <param name="Until">Last day; null while it goes on.</param>
public sealed record WorkedOn(LocalDate From, LocalDate? Until);
