using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.SeedDemo.Year;

/// <summary>Pain is reported on the private page; a coach deals with it.</summary>
internal sealed class PainHappenings(Scene scene)
{
    public Task Report(StudentLife life, IReadOnlyList<EmergencySign> signs, CancellationToken stop)
    {
        var form = new CheckInForm
        {
            Id = scene.Office.Ids.Next(),
            Minutes = 10,
            Pain = true,
            PainRegion = life.Chance.Of([Region.LowerBack, Region.LeadWrist, Region.TrailElbow]),
            Signs = signs,
            Comment = "Stopped after a few swings.",
        };
        return scene.Office.Must((RecordCheckIn record) => record.From(form, life.Pass!, stop));
    }

    public async Task See(StudentLife life, CancellationToken stop)
    {
        foreach (var report in await scene.Office.Read(db => db.CheckIns.Where(c => c.StudentId == life.Id && c.Pain && c.SeenAt == null).OrderBy(c => c.At).Select(c => c.Id).ToListAsync(stop)))
            await scene.Office.Must((SeePainReport see) => see.Done(report, life.Coach, stop));
    }
}
