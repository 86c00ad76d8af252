using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.UseCases.Lessons;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.Browser.Tests.Lessons;

/// <summary>Another coach at another device.</summary>
internal static class SomebodyElse
{
    /// <summary>Saves the lesson with another tilt.</summary>
    public static async Task Tilts(this RunningOffice office, string lesson, int degrees)
    {
        await using var scope = office.Services.CreateAsyncScope();
        var id = LessonId.From(Guid.Parse(lesson.Split('/')[^1]));
        var kept = await scope.ServiceProvider.GetRequiredService<OfficeDb>().Lessons.AsNoTracking().SingleAsync(l => l.Id == id);
        var form = new LessonForm { Heading = new LessonHeading(kept.HeldOn, kept.Club), Entries = [new MeasureEntry { Measure = Tee.Tilt, Text = $"{degrees}" }] };
        var saved = await scope.ServiceProvider.GetRequiredService<SaveLesson>().As(id, kept.Version, form, new Actor(kept.CoachId, "Another Coach", Policy.Coach));
        Assert.True(saved.Succeeded);
    }
}
