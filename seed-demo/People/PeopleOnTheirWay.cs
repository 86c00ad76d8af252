using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Swings;

namespace CoachOffice.SeedDemo.People;

/// <summary>Students whose plans stand at every stage.</summary>
internal static class PeopleOnTheirWay
{
    public static IReadOnlyList<Persona> All { get; } =
    [
        new()
        {
            Given = "Aoife", Family = "Ní Dhonnabháin", Age = 34, HeightCm = 168, Club = Club.Iron, Habits = ["body-outruns"], Response = Response.ImprovesQuickly, PractisesEvery = 3,
            Minutes = 180, Days = 4, Level = Level.Experienced, Place = Place.FullRange, Lessons = [318, 245, 86], Notes = "Works shifts, prefers late mornings.",
        },
        new()
        {
            Given = "Bartholomäus", Family = "von Hohenlimburg-Westerstetten", Age = 57, HeightCm = 186, Club = Club.Driver, Habits = ["setup-tilt", "early-throw"], Response = Response.ImprovesQuickly,
            PractisesEvery = 3, Minutes = 150, Goals = [Goal.Distance, Goal.Contact], SpeedGoal = 44, Place = Place.FullRange, Lessons = [340, 262, 180, 84],
        },
        new()
        {
            Given = "Chiamaka", Family = "Ezeilo", Age = 29, HeightCm = 171, Club = Club.Iron, Habits = ["out-to-in-arms"], Response = Response.ImprovesQuickly, PractisesEvery = 3, Coach = 2,
            Goals = [Goal.Direction], Minutes = 160, Days = 4, Place = Place.FullRange, Lessons = [290, 158, 58],
        },
        new()
        {
            Given = "Đorđe", Family = "Stanimirović", MailName = "dorde.stanimirovic", Age = 41, HeightCm = 190, Club = Club.Fairway, Habits = ["stand-up"], Response = Response.Improves, PractisesEvery = 3,
            Minutes = 140, Goals = [Goal.Contact, Goal.Comfort], Lessons = [275, 201, 121, 57],
        },
        new()
        {
            Given = "Émilie", Family = "Tréguier-Le Goff", Age = 38, HeightCm = 163, Club = Club.Iron, Habits = ["cupped-open"], Response = Response.Improves, PractisesEvery = 4, Coach = 2,
            Goals = [Goal.Direction, Goal.Consistency], Lessons = [233, 160, 27], Happens = [new(150, Happening.LevelUp)],
        },
        new()
        {
            Given = "Freyja", Family = "Sigurðardóttir", Age = 46, HeightCm = 174, Hand = Hand.Left, Club = Club.Wedge, Habits = ["sway"], Response = Response.ImprovesSlowly, PractisesEvery = 4,
            Lessons = [301, 230, 166, 98, 29], Place = Place.Course, Happens = [new(70, Happening.SkipMessage)],
        },
        new()
        {
            Given = "Gonçalo", Family = "Figueiroa", Age = 25, HeightCm = 181, Club = Club.Driver, Habits = ["ball-back-driver"], Response = Response.Improves, PractisesEvery = 3, Level = Level.Beginner,
            Goals = [Goal.Distance], SpeedGoal = 46, Lessons = [98, 13], Coach = 2,
        },
        new()
        {
            Given = "Hinemoa", Family = "Paraone", Age = 52, HeightCm = 166, Club = Club.Hybrid, Habits = ["ball-forward-off-turf"], Response = Response.Improves, PractisesEvery = 3,
            Place = Place.Garden, Lessons = [210, 117, 12],
        },
        new()
        {
            Given = "Ioannis", Family = "Papakonstantopoulos", Age = 63, HeightCm = 172, Club = Club.Iron, Habits = ["early-throw"], Response = Response.ImprovesSlowly, PractisesEvery = 4, Coach = 2,
            Lessons = [188, 99, 4], Place = Place.Net,
        },
        new()
        {
            Given = "Jadwiga", Family = "Wąsowicz-Brzęczyszczewska", Age = 31, HeightCm = 169, Club = Club.Iron, Habits = ["weak-grip-open"], Response = Response.Improves, PractisesEvery = 3,
            Level = Level.Beginner, Minutes = 60, Days = 2, Place = Place.Home, Lessons = [61, 5],
        },
    ];
}
