namespace CoachOffice.Web.Shell;

/// <summary>What just happened, said once on the next page; with a way back where there is one.</summary>
/// <param name="Sentence">For the person.</param>
/// <param name="UndoAction">Address that takes a plain POST and undoes it, or null.</param>
internal sealed record Notice(string Sentence, string? UndoAction = null);
