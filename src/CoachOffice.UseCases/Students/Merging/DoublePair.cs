using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Students.Merging;

/// <summary>Two records that may be one person.</summary>
/// <param name="One">The older record.</param>
/// <param name="OneName">Its name.</param>
/// <param name="Other">The newer record.</param>
/// <param name="OtherName">Its name.</param>
/// <param name="Why">What they have in common.</param>
/// <param name="MayBeFamily">True when only the mail address is the same: families share one.</param>
public sealed record DoublePair(StudentId One, string OneName, StudentId Other, string OtherName, string Why, bool MayBeFamily);
