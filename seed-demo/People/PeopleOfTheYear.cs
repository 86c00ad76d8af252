using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Swings;

namespace CoachOffice.SeedDemo.People;

/// <summary>Students with a long year: numbers that moved, did not, moved away or went through.</summary>
internal static class PeopleOfTheYear
{
    public static IReadOnlyList<Persona> All { get; } =
    [
        new()
        {
            Given = "Máirtín", Family = "Ó Súilleabháin", Age = 39, HeightCm = 176, Club = Club.Iron, Habits = ["slide", "strong-grip-closed"], Response = Response.Worsens, PractisesEvery = 3,
            Minutes = 200, Days = 4, Lessons = [349, 262, 175, 92], Place = Place.FullRange,
        },
        new()
        {
            Given = "Nakoma", Family = "Whitewater", Age = 26, HeightCm = 184, Club = Club.Iron, Habits = ["lost-side-bend"], Response = Response.GoesThrough, PractisesEvery = 4, Coach = 2,
            Lessons = [296, 204, 102], Level = Level.Experienced, Place = Place.FullRange,
        },
        new()
        {
            Given = "Olabisi", Family = "Adéwálé", Age = 48, HeightCm = 173, Club = Club.Driver, Habits = ["hanging-pelvis"], Response = Response.GoesThrough, PractisesEvery = 4,
            Lessons = [255, 165, 75], Goals = [Goal.Distance], SpeedGoal = 43, Place = Place.FullRange,
        },
        new()
        {
            Given = "Ptolemaios", Family = "Grigoriadis", Age = 32, HeightCm = 178, Club = Club.Iron, Habits = ["hips-hold-turn"], Response = Response.ImprovesSlowly, PractisesEvery = 4, RetestSwings = 1,
            Lessons = [288, 222, 144, 66], Coach = 2,
        },
        new()
        {
            Given = "Ragnhild", Family = "Skjæveland", Age = 51, HeightCm = 170, Club = Club.Hybrid, Habits = ["steep-then-throw", "cupped-open"], Response = Response.Stays, PractisesEvery = 3,
            Minutes = 240, Days = 5, Lessons = [353, 300, 246, 193, 139, 88, 37], Place = Place.FullRange, Level = Level.Experienced,
        },
        new()
        {
            Given = "Sithembile", Family = "Mkhabela", Age = 43, HeightCm = 168, Club = Club.Iron, Habits = ["early-throw"], Response = Response.Improves, PractisesEvery = 3, RetestsLateBy = 3,
            Lessons = [337, 259, 172, 91], Happens = [new(160, Happening.Pause), new(138, Happening.Resume), new(60, Happening.MoveMessage)],
        },
        new()
        {
            Given = "Thị Ánh", Family = "Nguyễn Phúc", Age = 24, HeightCm = 158, Club = Club.Wedge, Habits = ["stance-too-narrow"], Response = Response.Improves, PractisesEvery = 4, Coach = 2,
            Lessons = [224, 154, 47], Happens = [new(40, Happening.StopMessages)], Level = Level.Beginner, Place = Place.Net,
        },
        new()
        {
            Given = "Uchenna", Family = "Nwankwo-Featherstonehaugh", Age = 56, HeightCm = 185, Club = Club.Iron, Habits = ["strike-height-only"], Response = Response.Improves, PractisesEvery = 4,
            Lessons = [278, 199, 125, 50], Goals = [Goal.Contact], Happens = [new(110, Happening.HurryMessage), new(100, Happening.FewerMinutes)],
        },
        new()
        {
            Given = "Виолетта", Family = "Сорокина", MailName = "violetta.sorokina", Age = 36, HeightCm = 171, Club = Club.Iron, Habits = ["sound"], Response = Response.Stays, PractisesEvery = 4,
            Lessons = [252, 132, 34], Level = Level.Elite, Place = Place.FullRange, Coach = 2,
        },
    ];
}
