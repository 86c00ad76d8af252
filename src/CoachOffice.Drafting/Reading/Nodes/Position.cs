namespace CoachOffice.Drafting.Reading.Nodes;

/// <summary>A place in a file; line and column from 1, columns in characters.</summary>
internal readonly record struct Position(string File, int Line, int Column);
