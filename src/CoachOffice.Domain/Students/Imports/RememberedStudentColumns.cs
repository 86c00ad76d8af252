using CoachOffice.Domain.Access;
using NodaTime;

namespace CoachOffice.Domain.Students.Imports;

/// <summary>What was said of a list of students with these column names; the next list with the same names is read by it.</summary>
public sealed class RememberedStudentColumns
{
    private RememberedStudentColumns()
    {
    }

    /// <summary>Hash of the names of the columns, in their order and without case.</summary>
    public string HeaderSha256 { get; private set; } = "";

    public StudentColumns Columns { get; private set; } = new();

    /// <summary>Who said it last.</summary>
    public AccountId By { get; private set; }

    public Instant At { get; private set; }

    /// <summary>For column names not seen before.</summary>
    public static RememberedStudentColumns Of(string headerSha256) => new() { HeaderSha256 = headerSha256 };

    /// <summary>This is how they are read from now on.</summary>
    public void Say(StudentColumns columns, AccountId by, Instant now) => (Columns, By, At) = (columns, by, now);
}
