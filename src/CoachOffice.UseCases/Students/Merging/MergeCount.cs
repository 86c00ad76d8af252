namespace CoachOffice.UseCases.Students.Merging;

/// <summary>How many things of a kind hang on two records.</summary>
/// <param name="What">In words, e.g. "lessons".</param>
/// <param name="Stays">At the record that stays.</param>
/// <param name="Goes">At the one that goes; they come over.</param>
public sealed record MergeCount(string What, int Stays, int Goes);
