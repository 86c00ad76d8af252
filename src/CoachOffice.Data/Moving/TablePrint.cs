namespace CoachOffice.Data.Moving;

/// <summary>What a table holds, in short: two tables with the same print hold the same rows, whichever database keeps them.</summary>
/// <param name="Table">Its name.</param>
/// <param name="Rows">How many rows.</param>
/// <param name="Sum">The SHA-256 of every row in a form both databases give, added up, so that their order does not matter.</param>
public sealed record TablePrint(string Table, long Rows, string Sum);
