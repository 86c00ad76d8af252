using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.Domain.Lessons.Imports;

/// <summary>Everything a file needs to be told before it can be read.</summary>
/// <param name="Mapping">Its columns.</param>
/// <param name="Day">The day of all its swings, when no column says it.</param>
/// <param name="Club">The club of all its swings, when no column says it.</param>
public sealed record FileAnswers(ColumnMapping Mapping, LocalDate? Day, Club? Club);
