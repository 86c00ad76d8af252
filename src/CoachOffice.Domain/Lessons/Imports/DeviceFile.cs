using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Lessons.Imports;

/// <summary>A file of a launch monitor on its way into a student's lessons. Its text lies beside the database, only as long as it is open.</summary>
public sealed class DeviceFile
{
    /// <summary>The longest name that is kept.</summary>
    public const int LongestName = 120;

    /// <summary>A file nobody imports or drops is swept away after so long.</summary>
    public static readonly Duration OpenFor = Duration.FromHours(24);

    private DeviceFile()
    {
    }

    public Guid Id { get; private set; }

    public StudentId StudentId { get; private set; }

    /// <summary>Who brought it; while it is open nobody else sees it.</summary>
    public AccountId Account { get; private set; }

    /// <summary>Their name, for whoever brings the same file again.</summary>
    public string ByName { get; private set; } = "";

    /// <summary>As the file was called.</summary>
    public string Name { get; private set; } = "";

    /// <summary>Of its content.</summary>
    public string Sha256 { get; private set; } = "";

    public Instant OpenedAt { get; private set; }

    /// <summary>What was said of it so far.</summary>
    public FileAnswers? Answers { get; private set; }

    /// <summary>The content's hash again once it is imported: with the student it is unique, so that no file counts twice.</summary>
    public string? ImportedSha256 { get; private set; }

    public Instant? ImportedAt { get; private set; }

    /// <summary>What came of it.</summary>
    public FileOutcome? Outcome { get; private set; }

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    /// <summary>True until it is imported.</summary>
    public bool IsOpen => ImportedAt is null;

    /// <summary>A file was brought.</summary>
    public static DeviceFile Open(Guid id, StudentId student, Actor by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(by);
        return new DeviceFile { Id = id, StudentId = student, Account = by.Account!.Value, ByName = by.Name, OpenedAt = now };
    }

    /// <summary>Which file it is.</summary>
    public void Call(string name, string sha256)
    {
        ArgumentNullException.ThrowIfNull(name);
        (Name, Sha256) = (name.Length <= LongestName ? name : name[..LongestName], sha256);
    }

    /// <summary>How it is to be read.</summary>
    public void Say(FileAnswers? answers) => Answers = answers;

    /// <summary>It was imported.</summary>
    public void Close(FileOutcome outcome, Instant now) => (Outcome, ImportedSha256, ImportedAt) = (outcome, Sha256, now);
}
