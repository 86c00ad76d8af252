using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Students;

/// <summary>A student as listed.</summary>
/// <param name="Id">Whom.</param>
/// <param name="Name">Full name.</param>
/// <param name="Contact">Mail address or else phone: the guardian's for a minor; may be empty.</param>
/// <param name="IsMinor">Under 18 today.</param>
public sealed record StudentRow(StudentId Id, string Name, string Contact, bool IsMinor);
