namespace CoachOffice.Web.Features.Lessons;

/// <summary>What the lesson's pages stand on.</summary>
internal static class LessonSetup
{
    public static void AddLessonPages(this IServiceCollection services) => services.AddScoped<GradeEntries>();
}
