using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Swings;

namespace CoachOffice.SeedDemo.People;

/// <summary>Minors: their guardians get the mail.</summary>
internal static class YoungPeople
{
    public static IReadOnlyList<Persona> All { get; } =
    [
        new()
        {
            Given = "Saoirse", Family = "Mac Giolla Bhríde", Age = 15, HeightCm = 166, Club = Club.Iron, Habits = ["path-good-face-off"], Response = Response.Improves, PractisesEvery = 4,
            Guardian = ("Deirdre Mac Giolla Bhríde", "mother"), Goals = [Goal.Direction], Lessons = [270, 198, 126, 44],
        },
        new()
        {
            Given = "Tarek", Family = "El-Masry", Age = 12, HeightCm = 150, Club = Club.Iron, Habits = ["aim-makes-path"], Response = Response.ImprovesQuickly, PractisesEvery = 4, Level = Level.Beginner,
            Guardian = ("Hoda El-Masry", "mother"), Minutes = 60, Days = 2, Coach = 2, Lessons = [149, 83, 18],
        },
        new()
        {
            Given = "Uyanga", Family = "Batbayar", Age = 16, HeightCm = 170, Club = Club.Driver, Habits = ["short-turn"], Response = Response.Improves, PractisesEvery = 3, Level = Level.Experienced,
            Guardian = ("Ganbold Batbayar", "father"), Goals = [Goal.Distance], SpeedGoal = 42, Minutes = 240, Days = 5, Lessons = [330, 271, 209, 140, 77],
        },
        new()
        {
            Given = "Väinö", Family = "Äijälä", Age = 10, HeightCm = 139, Club = Club.Iron, Habits = ["ball-back-iron"], Response = Response.ImprovesSlowly, PractisesEvery = 5, Level = Level.Beginner,
            Guardian = ("Orvokki Äijälä", "grandmother"), Minutes = 40, Days = 2, Place = Place.Garden, Coach = 2, Lessons = [70, 9],
        },
        new()
        {
            Given = "Wilhelmina", Family = "Okafor-Lindqvist", Age = 17, HeightCm = 177, Hand = Hand.Left, Club = Club.Driver, Habits = ["open-face-no-lean"], Response = Response.ImprovesQuickly,
            PractisesEvery = 3, Level = Level.Elite, Guardian = ("Torbjörn Lindqvist", "father"), Minutes = 420, Days = 6, Goals = [Goal.Direction, Goal.Distance], SpeedGoal = 45, Place = Place.FullRange,
            Lessons = [358, 309, 261, 214, 168, 120, 73, 26],
        },
    ];
}
