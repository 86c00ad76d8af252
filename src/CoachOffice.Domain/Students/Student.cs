using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.Domain.Students;

/// <summary>A person who takes lessons. Details are checked by <see cref="StudentCheck"/> before they get here.</summary>
public sealed partial class Student
{
    private Student()
    {
    }

    public StudentId Id { get; private set; }

    public string GivenName { get; private set; } = "";

    public string FamilyName { get; private set; } = "";

    public string Email { get; private set; } = "";

    public string Phone { get; private set; } = "";

    public LocalDate? BirthDate { get; private set; }

    public Guardian? Guardian { get; private set; }

    /// <summary>Who pays for the lessons; students with the same payer are a household. Null until the first charge.</summary>
    public PayerId? PayerId { get; private set; }

    public Hand Hand { get; private set; }

    public Level Level { get; private set; }

    public IReadOnlyList<Goal> Goals { get; private set; } = [];

    public IReadOnlyList<Kit> Kit { get; private set; } = [];

    public Room Room { get; private set; }

    public int MinutesPerWeek { get; private set; }

    public int DaysPerWeek { get; private set; }

    public IReadOnlyList<StudentLimit> Limits { get; private set; } = [];

    /// <summary>Wanted club-head speed in m/s, or null.</summary>
    public double? ClubSpeedGoalMetresPerSecond { get; private set; }

    /// <summary>Stature in cm, or null.</summary>
    public double? HeightCm { get; private set; }

    public string Notes { get; private set; } = "";

    /// <summary>Family name, given name, mail and phone without marks and in lower case: for search and order of lists.</summary>
    public string SearchText { get; private set; } = "";

    public Instant AddedAt { get; private set; }

    public Instant? ArchivedAt { get; private set; }

    /// <summary>Set when the person was erased for good, or became part of another record; only a pseudonym is left.</summary>
    public Instant? ErasedAt { get; private set; }

    /// <summary>The record that took this one in: whoever comes here is led there.</summary>
    public StudentId? MergedInto { get; private set; }

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    public string FullName => FamilyName.Length == 0 ? GivenName : $"{GivenName} {FamilyName}";

    /// <summary>A new student.</summary>
    public static Student Register(StudentId id, StudentDetails details, Instant now)
    {
        var student = new Student { Id = id, AddedAt = now };
        student.Change(details);
        return student;
    }

    /// <summary>Takes over what a person entered.</summary>
    public void Change(StudentDetails details)
    {
        ArgumentNullException.ThrowIfNull(details);
        (GivenName, FamilyName) = (details.GivenName.Trim(), details.FamilyName.Trim());
        (Email, Phone, Notes) = (details.Email.Trim(), details.Phone.Trim(), details.Notes.Trim());
        (BirthDate, Guardian) = (details.BirthDate, details.Guardian);
        (Hand, Level, Room) = (details.Hand, details.Level, details.Room);
        (Goals, Kit, Limits) = (details.Goals, details.Kit, details.Limits);
        (MinutesPerWeek, DaysPerWeek) = (details.MinutesPerWeek, details.DaysPerWeek);
        ClubSpeedGoalMetresPerSecond = details.ClubSpeedGoal?.In(Unit.MetrePerSecond).Value;
        HeightCm = details.Height?.In(Unit.Centimetre).Value;
        SearchText = StudentSearch.TextOf(FamilyName, GivenName, Email, Phone);
    }

    /// <summary>All that a person entered, as it stands.</summary>
    public StudentDetails Details() => new()
    {
        GivenName = GivenName,
        FamilyName = FamilyName,
        Email = Email,
        Phone = Phone,
        BirthDate = BirthDate,
        Guardian = Guardian,
        Hand = Hand,
        Level = Level,
        Goals = Goals,
        Kit = Kit,
        Room = Room,
        MinutesPerWeek = MinutesPerWeek,
        DaysPerWeek = DaysPerWeek,
        Limits = Limits,
        ClubSpeedGoal = ClubSpeedGoalMetresPerSecond is { } speed ? new Quantity(speed, Unit.MetrePerSecond) : null,
        Height = HeightCm is { } height ? new Quantity(height, Unit.Centimetre) : null,
        Notes = Notes,
    };

    /// <summary>Where mail goes on a day: to the guardian of a minor, else to the student; null when there is no address.</summary>
    public MailRecipient? RecipientOn(LocalDate day)
    {
        if (ErasedAt is not null) return null;
        if (BirthDate is { } born && Ages.IsMinor(born, day)) return Guardian is { } g ? new MailRecipient(g.Name, g.Email, true) : null;
        return Email.Length > 0 ? new MailRecipient(FullName, Email, false) : null;
    }

    /// <summary>Says who pays from now on; what was charged before stays with whom it was charged to.</summary>
    public void PaidBy(PayerId payer) => PayerId = payer;

    /// <summary>A payer of their own is made when there is something to pay again.</summary>
    public void PaidByNobody() => PayerId = null;

    public void Archive(Instant now) => ArchivedAt ??= now;

    public void Restore() => ArchivedAt = null;

    /// <summary>Removes the person and keeps a pseudonym, so that sums and figures stay right.</summary>
    public void Erase(Instant now)
    {
        Leave("Former student", now);
    }

    /// <summary>Takes another record of the same person in, as far as the records themselves go: what a person chose of the two, and whatever is stricter. The other becomes a signpost that leads here and holds no word about the person.</summary>
    public void TakeIn(Student other, StudentDetails chosen, PayerId? payer, Instant now)
    {
        ArgumentNullException.ThrowIfNull(other);
        Change(chosen);
        PayerId = payer;
        if (other.ArchivedAt is null) Restore();
        foreach (var purpose in MessagePurposes.OfStudents)
            if (other.StoppedAt(purpose) is { } stopped) Stop(purpose, stopped);
        if (other.GuardianWithdrewAt is { } withdrew) GuardianWithdraws(withdrew);
        if (other.AddedAt < AddedAt) AddedAt = other.AddedAt;
        other.Leave("Part of another record", now);
        (other.MergedInto, other.PayerId) = (Id, null);
    }

    private void Leave(string pseudonym, Instant now)
    {
        Change(new StudentDetails { GivenName = $"{pseudonym} {Id.Value.ToString("N")[^6..]}", Hand = Hand, Level = Level, Room = Room, MinutesPerWeek = 0, DaysPerWeek = 0 });
        (ErasedAt, ArchivedAt, Contact) = (now, ArchivedAt ?? now, ContactWishes.Usual);
    }
}
