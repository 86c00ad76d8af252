using NodaTime;

namespace CoachOffice.Domain.Students.Groups;

/// <summary>Students who are taught together, such as a junior squad: a name and its members. A student may be in several.</summary>
public sealed class StudentGroup
{
    /// <summary>The longest name.</summary>
    public const int LongestName = 80;

    private readonly List<GroupMember> _members = [];

    private StudentGroup()
    {
    }

    public GroupId Id { get; private set; }

    /// <summary>As the practice calls it; no two groups need differ in it.</summary>
    public string Name { get; private set; } = "";

    /// <summary>In no order.</summary>
    public IReadOnlyList<GroupMember> Members => _members;

    public Instant CreatedAt { get; private set; }

    /// <summary>Set while the group is not taught any more.</summary>
    public Instant? ArchivedAt { get; private set; }

    /// <summary>Concurrency token, raised at each save, a member's coming and going too.</summary>
    public int Version { get; private set; }

    /// <summary>A new group without members.</summary>
    public static StudentGroup Begin(GroupId id, string name, Instant now)
    {
        var group = new StudentGroup { Id = id, CreatedAt = now };
        group.Rename(name);
        return group;
    }

    /// <summary>What is wrong with a name, or null.</summary>
    public static Refusal? Refuses(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        if (!OneLine.Shows(name)) return new Refusal("group-name", "Give the group a name.", nameof(Name));
        if (name.Trim().Length > LongestName) return new Refusal("group-name-long", $"A group's name may have up to {LongestName} characters.", nameof(Name));
        return OneLine.Fits(name) && name == StudentSearch.Whole(name) ? null : new Refusal("group-name-line", OneLine.Wanted, nameof(Name));
    }

    /// <summary>Calls it otherwise.</summary>
    public void Rename(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        Name = name.Trim();
    }

    /// <summary>Puts a student in; false when they are in it already.</summary>
    public bool Add(StudentId student, Instant now)
    {
        if (_members.Exists(m => m.StudentId == student)) return false;
        _members.Add(new GroupMember(Id, student, now));
        return true;
    }

    /// <summary>Takes a student out; false when they are not in it.</summary>
    public bool Remove(StudentId student) => _members.RemoveAll(m => m.StudentId == student) > 0;

    public void Archive(Instant now) => ArchivedAt ??= now;

    public void Restore() => ArchivedAt = null;
}
