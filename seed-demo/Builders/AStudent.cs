using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.SeedDemo.Builders;

/// <summary>Invented students. Start from one and change what matters with <c>with</c>.</summary>
public static class AStudent
{
    /// <summary>An adult who practises three days a week.</summary>
    public static StudentDetails Named(string given, string family) => new()
    {
        GivenName = given,
        FamilyName = family,
        Email = MailOf(given, family),
        Phone = "+44 1632 960 001",
        BirthDate = new LocalDate(1984, 5, 17),
        Hand = Hand.Right,
        Level = Level.Improver,
        Goals = [Goal.Consistency, Goal.Contact],
        Kit = [Kit.Ball, Kit.Tee, Kit.AlignmentStick, Kit.Towel],
        Room = Room.Range,
        MinutesPerWeek = 120,
        DaysPerWeek = 3,
    };

    /// <summary>A girl or boy of twelve in early 2026, with a guardian.</summary>
    public static StudentDetails Junior(string given, string family) => Named(given, family) with
    {
        Email = "",
        Phone = "",
        BirthDate = new LocalDate(2013, 9, 3),
        Level = Level.Beginner,
        MinutesPerWeek = 60,
        DaysPerWeek = 2,
        Guardian = new Guardian { Name = $"Mara {family}", Email = MailOf("mara", family), Phone = "+44 1632 960 002", Relation = "mother" },
    };

    /// <summary>With a limit in a region, as the student told it.</summary>
    public static StudentDetails WithLimit(this StudentDetails student, Region region, LimitStatus status = LimitStatus.Current) => student with
    {
        Limits = [.. student.Limits, new StudentLimit { Region = region, Status = status, NotedOn = new LocalDate(2026, 1, 12), Source = "student" }],
    };

    private static string MailOf(string given, string family)
    {
        var name = StudentSearch.Fold($"{given}.{family}").Replace(' ', '-');
        return $"{new string([.. name.Where(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '-')]).Trim('.')}@example.org";
    }
}
