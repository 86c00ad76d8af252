namespace CoachOffice.UseCases.Rulebook;

/// <summary>What came of keeping changes of entries.</summary>
/// <param name="IsKept">False when an entry has faults and was not to be kept unfinished.</param>
/// <param name="IsNews">False when it says what is in force already; it waits for nothing then.</param>
/// <param name="Check">How the gathered changes fit together with these.</param>
/// <param name="Waiting">How many entries are changed and not in force now.</param>
public sealed record KeptChange(bool IsKept, bool IsNews, WorkCheck Check, int Waiting);
