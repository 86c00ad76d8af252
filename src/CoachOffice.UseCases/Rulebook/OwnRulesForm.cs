namespace CoachOffice.UseCases.Rulebook;

/// <summary>Own changes of the rulebook as a file, to take the place of all there are.</summary>
/// <param name="Text">The file's text.</param>
/// <param name="Why">The reason, for the history.</param>
/// <param name="Edition">The edition it was made from; null to take the place of whatever is in force.</param>
/// <param name="DryRun">True to be told what would change and change nothing.</param>
public sealed record OwnRulesForm(string Text, string Why, int? Edition = null, bool DryRun = false);
