namespace CoachOffice.Domain.Students.Imports;

/// <summary>What came of a list of students, in numbers of rows; never a word from it.</summary>
/// <param name="Added">Students added.</param>
/// <param name="Filled">Students who were there and got empty fields filled.</param>
/// <param name="Known">Rows whose student was there and stayed as they were.</param>
/// <param name="Refused">Rows refused.</param>
public sealed record StudentFileOutcome(int Added, int Filled, int Known, int Refused);
