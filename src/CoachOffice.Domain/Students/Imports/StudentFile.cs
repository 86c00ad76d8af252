using CoachOffice.Domain.Access;
using NodaTime;

namespace CoachOffice.Domain.Students.Imports;

/// <summary>A list of students on its way into the practice. Its text lies beside the database: while it is open, and a day longer when rows were refused.</summary>
public sealed class StudentFile
{
    /// <summary>The longest name that is kept.</summary>
    public const int LongestName = 120;

    /// <summary>A text is swept away so long after it was brought.</summary>
    public static readonly Duration LiesFor = Duration.FromHours(24);

    private StudentFile()
    {
    }

    public Guid Id { get; private set; }

    /// <summary>Who brought it; while it is open nobody else sees it.</summary>
    public AccountId Account { get; private set; }

    /// <summary>Their name, for whoever brings the same list again.</summary>
    public string ByName { get; private set; } = "";

    /// <summary>As the file was called.</summary>
    public string Name { get; private set; } = "";

    /// <summary>Of its content.</summary>
    public string Sha256 { get; private set; } = "";

    public Instant OpenedAt { get; private set; }

    /// <summary>What was said of it so far.</summary>
    public StudentColumns? Columns { get; private set; }

    /// <summary>Hash of content and columns once it is brought in and not undone: unique, so that no list counts twice.</summary>
    public string? BroughtSha256 { get; private set; }

    public Instant? BroughtAt { get; private set; }

    /// <summary>What came of it.</summary>
    public StudentFileOutcome? Outcome { get; private set; }

    /// <summary>Set when it was undone as a whole; who stayed is what is left in <see cref="BroughtStudent"/>.</summary>
    public Instant? UndoneAt { get; private set; }

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    /// <summary>True until it is brought in.</summary>
    public bool IsOpen => BroughtAt is null;

    /// <summary>A list was brought.</summary>
    public static StudentFile Open(Guid id, Actor by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(by);
        return new StudentFile { Id = id, Account = by.Account!.Value, ByName = by.Name, OpenedAt = now };
    }

    /// <summary>Which file it is.</summary>
    public void Call(string name, string sha256)
    {
        ArgumentNullException.ThrowIfNull(name);
        (Name, Sha256) = (name.Length <= LongestName ? name : name[..LongestName], sha256);
    }

    /// <summary>How it is to be read.</summary>
    public void Say(StudentColumns? columns) => Columns = columns;

    /// <summary>It was brought in.</summary>
    public void Close(StudentFileOutcome outcome, string sha256, Instant now) => (Outcome, BroughtSha256, BroughtAt) = (outcome, sha256, now);

    /// <summary>It was taken back; the same list may be brought in again.</summary>
    public void Undo(Instant now) => (UndoneAt, BroughtSha256) = (now, null);
}
