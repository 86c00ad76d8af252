namespace CoachOffice.Domain.Students.Imports;

/// <summary>What one column of a list of students holds.</summary>
/// <param name="Column">Which, from 0.</param>
/// <param name="Field">What it holds.</param>
public sealed record StudentColumn(int Column, StudentField Field);
