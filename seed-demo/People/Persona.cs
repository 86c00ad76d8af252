using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Swings;
using NodaTime;

namespace CoachOffice.SeedDemo.People;

/// <summary>An invented person: who they are, how they swing, and what their year is like. Days are counted back from the opening.</summary>
internal sealed record Persona
{
    public required string Given { get; init; }

    public required string Family { get; init; }

    /// <summary>Years at the opening.</summary>
    public required int Age { get; init; }

    public Hand Hand { get; init; } = Hand.Right;

    public Level Level { get; init; } = Level.Improver;

    public IReadOnlyList<Goal> Goals { get; init; } = [Goal.Consistency, Goal.Contact];

    public Place Place { get; init; } = Place.Range;

    public int Minutes { get; init; } = 120;

    public int Days { get; init; } = 3;

    public double HeightCm { get; init; } = 175;

    /// <summary>m/s.</summary>
    public double? SpeedGoal { get; init; }

    public IReadOnlyList<BodyLimit> Limits { get; init; } = [];

    /// <summary>Name and relation, for a minor.</summary>
    public (string Name, string Relation)? Guardian { get; init; }

    public bool HasMail { get; init; } = true;

    /// <summary>The name in their address, where their own is not written in Latin letters.</summary>
    public string? MailName { get; init; }

    public string Notes { get; init; } = "";

    /// <summary>The first or the second coach.</summary>
    public int Coach { get; init; } = 1;

    public Club Club { get; init; } = Club.Iron;

    /// <summary>Habits of the swing, the one that counts most first.</summary>
    public required IReadOnlyList<string> Habits { get; init; }

    public Response Response { get; init; } = Response.Improves;

    /// <summary>Days of lessons, the longest ago first.</summary>
    public required IReadOnlyList<int> Lessons { get; init; }

    public LastLesson LastLesson { get; init; }

    /// <summary>Swings filmed in a lesson.</summary>
    public int Swings { get; init; } = 5;

    /// <summary>Days between practice; 0 is never.</summary>
    public int PractisesEvery { get; init; } = 4;

    /// <summary>Nothing is practised in so many last days.</summary>
    public int NoPracticeInLast { get; init; }

    /// <summary>How many days after the due day a re-test is taken.</summary>
    public int RetestsLateBy { get; init; }

    /// <summary>Swings of a re-test when it is fewer than asked for.</summary>
    public int? RetestSwings { get; init; }

    /// <summary>No re-tests are taken in so many last days.</summary>
    public int NoRetestsInLast { get; init; }

    /// <summary>No second looks are taken in so many last days.</summary>
    public int NoSecondLooksInLast { get; init; }

    public IReadOnlyList<Dated> Happens { get; init; } = [];

    /// <summary>The day they joined.</summary>
    public int JoinedBefore => Lessons[0] + 4;

    /// <summary>Address at the invented provider, or none.</summary>
    public string Mail => HasMail && Guardian is null ? Address(MailName ?? Given, MailName is null ? Family : "") : "";

    public SwingBody Body => new(Club, HeightCm, SpeedGoal, Response);

    /// <summary>What was typed in when they joined.</summary>
    public StudentDetails On(LocalDate today) => new()
    {
        GivenName = Given,
        FamilyName = Family,
        Email = Mail,
        Phone = $"+44 1632 960 {100 + ((Given.Length * 31) + (Family.Length * 7) + Age) % 900:000}",
        BirthDate = today.PlusYears(-Age).PlusDays(-(60 + (Family.Length * 11))),
        Guardian = Guardian is { } g ? new Guardian { Name = g.Name, Relation = g.Relation, Email = Address(g.Name, ""), Phone = "+44 1632 960 011" } : null,
        Hand = Hand,
        Level = Level,
        Goals = Goals,
        Kit = Place.Kit,
        Room = Place.Room,
        MinutesPerWeek = Minutes,
        DaysPerWeek = Days,
        Limits = [.. Limits.Select(l => new StudentLimit { Region = l.Region, Status = l.Status, NotedOn = today.PlusDays(-JoinedBefore), Source = "student" })],
        ClubSpeedGoal = SpeedGoal is { } goal ? new Quantity(goal, Unit.MetrePerSecond) : null,
        Height = new Quantity(HeightCm, Unit.Centimetre),
        Notes = Notes,
    };

    private static string Address(string given, string family)
    {
        var folded = StudentSearch.Fold($"{given} {family}").Replace(' ', '.');
        return $"{new string([.. folded.Where(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '-')]).Trim('.')}@post.example";
    }
}
