using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Lessons.Imports;

/// <summary>What one column of a device's file holds.</summary>
/// <param name="Column">Which column, from 0.</param>
/// <param name="Measure">The measure of the rulebook.</param>
/// <param name="Unit">Symbol of the unit its numbers are in.</param>
/// <param name="Plus">What a positive number means.</param>
public sealed record MappedColumn(int Column, MeasureId Measure, string Unit, PlusMeans Plus);
