namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>What a coach chose for one column, as chosen; empty is not said yet.</summary>
/// <param name="Column">Which, from 0.</param>
/// <param name="Measure">Id of the measure; empty leaves the column out.</param>
/// <param name="Unit">Symbol of the unit.</param>
/// <param name="Plus">Word for what a positive number means.</param>
public sealed record ColumnChoice(int Column, string Measure, string Unit = "", string Plus = "");
