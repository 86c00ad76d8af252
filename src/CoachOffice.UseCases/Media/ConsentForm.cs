using NodaTime;

namespace CoachOffice.UseCases.Media;

/// <summary>Consent as told.</summary>
/// <param name="GivenBy">Name of whoever gave it: the guardian of a minor, else the student.</param>
/// <param name="GivenOn">The day they gave it.</param>
public sealed record ConsentForm(string GivenBy, LocalDate GivenOn);
