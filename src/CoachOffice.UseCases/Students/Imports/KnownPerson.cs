using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>Somebody a row may be: a student who is there, or an earlier row of the same list.</summary>
internal sealed class KnownPerson(StudentId? id, int line, StudentDetails details)
{
    /// <summary>Null for an earlier row.</summary>
    public StudentId? Id { get; } = id;

    /// <summary>The earlier row's line.</summary>
    public int Line { get; } = line;

    /// <summary>As they are now, with what earlier rows filled.</summary>
    public StudentDetails Details { get; set; } = details;

    public string Name => $"{Details.GivenName} {Details.FamilyName}".Trim();
}
