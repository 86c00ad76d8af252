namespace CoachOffice.Domain.Lessons.Imports;

/// <summary>A row of a file that was refused, or kept with a doubt, and why.</summary>
/// <param name="Line">Its line in the file, from 1.</param>
/// <param name="Code">The kind of reason, kebab-case.</param>
/// <param name="Sentence">The reason, for the person.</param>
public sealed record NotedRow(int Line, string Code, string Sentence);
