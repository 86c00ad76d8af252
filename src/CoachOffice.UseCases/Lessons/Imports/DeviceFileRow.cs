using NodaTime;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>A file in the list at a student.</summary>
/// <param name="Id">The file.</param>
/// <param name="Name">As it was called.</param>
/// <param name="ByName">Who brought it.</param>
/// <param name="On">The day it was imported; null while it is open.</param>
/// <param name="Swings">How many swings were kept.</param>
public sealed record DeviceFileRow(Guid Id, string Name, string ByName, LocalDate? On, int Swings);
