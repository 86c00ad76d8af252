using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Swings;

namespace CoachOffice.SeedDemo.People;

/// <summary>Students who need somebody today: a lesson, a draft, a re-test, a letter that did not go, silence.</summary>
internal static class PeopleOfToday
{
    public static IReadOnlyList<Persona> All { get; } =
    [
        new()
        {
            Given = "Xochitl", Family = "Tzompantzi", Age = 33, HeightCm = 160, Club = Club.Iron, Habits = ["strong-grip-closed"], Response = Response.Improves, PractisesEvery = 4,
            Lessons = [207, 136, 70, 0], LastLesson = LastLesson.Opened,
        },
        new()
        {
            Given = "Yaw", Family = "Asante-Mensah", Age = 40, HeightCm = 182, Club = Club.Iron, Habits = ["lost-side-bend"], Response = Response.ImprovesSlowly, PractisesEvery = 4, Coach = 2,
            Lessons = [118, 52, 0], LastLesson = LastLesson.Recorded,
        },
        new()
        {
            Given = "Zsófia", Family = "Kisfaludi-Nagy", Age = 28, HeightCm = 172, Club = Club.Driver, Habits = ["quick-down"], Response = Response.Improves, PractisesEvery = 4,
            Goals = [Goal.Consistency, Goal.Distance], SpeedGoal = 40, Lessons = [155, 80, 0], LastLesson = LastLesson.Drafted,
        },
        new()
        {
            Given = "Anaïs", Family = "Boisclair", Age = 45, HeightCm = 165, Hand = Hand.Left, Club = Club.Iron, Habits = ["early-lead-lean"], Response = Response.Stays, PractisesEvery = 4,
            Lessons = [240, 171, 95, 1], LastLesson = LastLesson.Drafted, Coach = 2,
        },
        new()
        {
            Given = "Beniamino", Family = "Casagrande", Age = 53, HeightCm = 177, Club = Club.Fairway, Habits = ["stuck-under"], Response = Response.Stays, PractisesEvery = 3,
            Lessons = [186, 107, 2], LastLesson = LastLesson.Drafted, Level = Level.Experienced, Place = Place.FullRange,
        },
        new()
        {
            Given = "Cadfael", Family = "Llwyd-Prydderch", Age = 37, HeightCm = 180, Club = Club.Iron, Habits = ["steep-then-throw"], Response = Response.Stays, PractisesEvery = 3, Minutes = 180, Days = 4,
            Lessons = [264, 178, 64], NoRetestsInLast = 36, NoPracticeInLast = 34, Place = Place.FullRange, Coach = 2,
        },
        new()
        {
            Given = "Dagný", Family = "Hallgrímsdóttir", Age = 50, HeightCm = 169, Club = Club.Iron, Habits = ["quick-back"], Response = Response.ImprovesQuickly, PractisesEvery = 3,
            Lessons = [195, 113, 41], NoSecondLooksInLast = 40,
        },
        new()
        {
            Given = "Efraín", Family = "Huamán Ccori", Age = 66, HeightCm = 168, Club = Club.Iron, Habits = ["setup-tilt-too-much"], Response = Response.Improves, PractisesEvery = 0, HasMail = false,
            Lessons = [143, 68, 3], Notes = "No mail, no telephone after six. Print the plan.", Happens = [new(60, Happening.SkipMessage)],
        },
        new()
        {
            Given = "Fenna", Family = "Postma", Age = 23, HeightCm = 179, Club = Club.Driver, Habits = ["strike-only"], Response = Response.Improves, PractisesEvery = 0,
            Lessons = [85, 31], Coach = 2,
        },
        new()
        {
            Given = "Giedrius", Family = "Vaičiūnas", Age = 35, HeightCm = 188, Club = Club.Iron, Habits = ["stalled-body"], Response = Response.Improves, PractisesEvery = 4, Place = Place.BareHome,
            Minutes = 45, Lessons = [167, 94, 19], NoRetestsInLast = 15,
        },
    ];
}
