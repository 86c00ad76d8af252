using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>Which file to import, for whom, and into which lessons that are there already.</summary>
/// <param name="Student">Whose swings.</param>
/// <param name="File">The file.</param>
/// <param name="Into">By <see cref="DeviceGroup.Key"/>; what is not named becomes a new lesson.</param>
/// <param name="Actor">Who imports.</param>
public sealed record ImportOrder(StudentId Student, Guid File, IReadOnlyDictionary<string, LessonId> Into, Actor Actor);
