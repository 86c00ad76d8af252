using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>What taking a list back came to.</summary>
/// <param name="Removed">Students the list had added and who are gone.</param>
/// <param name="Emptied">Students whose filled fields are empty again.</param>
/// <param name="Stayed">How many stayed as they are, since something happened with them.</param>
public sealed record UndoneList(int Removed, int Emptied, int Stayed);
