using CoachOffice.Domain.Students.Imports;
using NodaTime;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>A list of students in the list of lists.</summary>
/// <param name="Id">The list.</param>
/// <param name="Name">As the file was called.</param>
/// <param name="ByName">Who brought it.</param>
/// <param name="On">The day it was brought in; null while it is open.</param>
/// <param name="Outcome">What came of it; null while it is open.</param>
/// <param name="IsUndone">True when it was taken back.</param>
public sealed record StudentFileRow(Guid Id, string Name, string ByName, LocalDate? On, StudentFileOutcome? Outcome, bool IsUndone);
