using CoachOffice.Web.Features.Plans.Story;

namespace CoachOffice.Web.Features.Plans;

/// <summary>What the plan's pages stand on.</summary>
internal static class PlanSetup
{
    public static void AddPlanPages(this IServiceCollection services) =>
        services.AddSingleton<DraftStories>().AddScoped<PlanVerbs>().AddScoped<DrillVerbs>().AddScoped<StateVerbs>().AddScoped<EndPlanVerbs>().AddScoped<CareVerbs>().AddScoped<StageOrder>().AddScoped<FollowUps.MessageVerbs>();
}
