using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Swings;

namespace CoachOffice.SeedDemo.People;

/// <summary>Students whose plans ended one way or another, and those who moved on.</summary>
internal static class PeopleWhoLeft
{
    public static IReadOnlyList<Persona> All { get; } =
    [
        new()
        {
            Given = "Habiba", Family = "Chowdhury", Age = 30, HeightCm = 162, Club = Club.Iron, Habits = ["weak-grip-open"], Response = Response.ImprovesQuickly, PractisesEvery = 3,
            Lessons = [344, 280, 213], Happens = [new(150, Happening.Complete), new(140, Happening.Archive)],
        },
        new()
        {
            Given = "Ignacy", Family = "Żółciński", MailName = "ignacy.zolcinski", Age = 47, HeightCm = 175, Club = Club.Driver, Habits = ["setup-tilt"], Response = Response.Stays, PractisesEvery = 6,
            Lessons = [312, 235], Happens = [new(200, Happening.Revoke), new(199, Happening.Archive)],
        },
        new()
        {
            Given = "Jörmundur", Family = "Þorvaldsson", MailName = "jormundur.thorvaldsson", Age = 70, HeightCm = 181, Club = Club.Iron, Habits = ["sway"], Response = Response.ImprovesSlowly, PractisesEvery = 4,
            Lessons = [299, 226, 170], Happens = [new(120, Happening.Archive), new(20, Happening.Restore)], Coach = 2,
        },
        new()
        {
            Given = "Kalliope", Family = "Stavrianidou", Age = 42, HeightCm = 167, Club = Club.Iron, Habits = ["body-outruns"], Response = Response.Improves, PractisesEvery = 4,
            Lessons = [221, 149], Happens = [new(147, Happening.EnterInError), new(130, Happening.Archive)],
        },
        new()
        {
            Given = "Lubomír", Family = "Hrdlička", Age = 58, HeightCm = 179, Club = Club.Fairway, Habits = ["out-to-in-arms"], Response = Response.Worsens, PractisesEvery = 4, Minutes = 180, Days = 4,
            Lessons = [334, 241], Happens = [new(120, Happening.Erase)],
        },
    ];
}
