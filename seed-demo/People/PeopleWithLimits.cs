using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Swings;

namespace CoachOffice.SeedDemo.People;

/// <summary>Students with something to be careful about, and those who reported pain.</summary>
internal static class PeopleWithLimits
{
    public static IReadOnlyList<Persona> All { get; } =
    [
        new()
        {
            Given = "Kazimierz", Family = "Dołęga", MailName = "kazimierz.dolega", Age = 68, HeightCm = 176, Club = Club.Iron, Habits = ["reverse-tilt"], Response = Response.Improves, PractisesEvery = 4,
            Goals = [Goal.Comfort, Goal.Consistency], Limits = [new(Region.LowerBack, LimitStatus.Past)], Lessons = [283, 215, 142, 71],
        },
        new()
        {
            Given = "Léopoldine", Family = "d'Aubenas", Age = 59, HeightCm = 164, Club = Club.Iron, Habits = ["hips-hold-turn"], Response = Response.ImprovesSlowly, PractisesEvery = 4, Coach = 2,
            Limits = [new(Region.TrailHip, LimitStatus.Current)], Place = Place.Home, Minutes = 60, Lessons = [176, 104, 33],
        },
        new()
        {
            Given = "Matiu", Family = "Te Rangihau", Age = 44, HeightCm = 183, Club = Club.Driver, Habits = ["chopped-driver"], Response = Response.ImprovesQuickly, PractisesEvery = 4,
            Limits = [new(Region.LeadShoulder, LimitStatus.Cleared)], Goals = [Goal.Distance], SpeedGoal = 47, Lessons = [244, 163, 78],
        },
        new()
        {
            Given = "Nneka", Family = "Obiechina", Age = 36, HeightCm = 170, Club = Club.Iron, Habits = ["hanging-pelvis"], Response = Response.Improves, PractisesEvery = 4, Coach = 2,
            Lessons = [197, 122, 24], Happens = [new(1, Happening.ReportPain)],
        },
        new()
        {
            Given = "Özgür", Family = "Karadeniz-Yıldırımoğlu", MailName = "ozgur.karadeniz", Age = 49, HeightCm = 178, Club = Club.Fairway, Habits = ["slide"], Response = Response.Stays, PractisesEvery = 4,
            Lessons = [256, 181, 90, 36], Happens = [new(6, Happening.ReportPain), new(5, Happening.SeePain)],
        },
        new()
        {
            Given = "Petronella", Family = "van der Westhuizen", Age = 55, HeightCm = 167, Club = Club.Iron, Habits = ["stance-too-wide"], Response = Response.Improves, PractisesEvery = 4,
            Lessons = [320, 250, 182, 110, 45], Happens = [new(98, Happening.ReportPain), new(97, Happening.SeePain), new(90, Happening.Resume)],
        },
        new()
        {
            Given = "Quirijn", Family = "Hoogendoorn", Age = 27, HeightCm = 194, Club = Club.Iron, Habits = ["shoulders-open-early"], Response = Response.Improves, PractisesEvery = 4, Coach = 2,
            Lessons = [130, 20], Happens = [new(0, Happening.ReportSign)],
        },
        new()
        {
            Given = "Rosalind", Family = "Achterberg", Age = 61, HeightCm = 165, Club = Club.Hybrid, Habits = ["head-off-ball"], Response = Response.ImprovesSlowly, PractisesEvery = 4,
            Place = Place.Garden, Lessons = [228, 151, 62], Happens = [new(140, Happening.NoteLimit), new(80, Happening.ClearLimit)],
        },
    ];
}
