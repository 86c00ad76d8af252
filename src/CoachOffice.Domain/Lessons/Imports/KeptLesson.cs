using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.Domain.Lessons.Imports;

/// <summary>Where swings of a file went.</summary>
/// <param name="Lesson">Id of the lesson.</param>
/// <param name="Day">Its day.</param>
/// <param name="Club">Its club.</param>
/// <param name="Swings">How many swings it took up.</param>
/// <param name="IsNew">False when the lesson was there before.</param>
public sealed record KeptLesson(Guid Lesson, LocalDate Day, Club Club, int Swings, bool IsNew);
