using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Lessons.Imports;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>Begins to import a file whose columns were told. The rows are kept with their audit rows in one transaction of their own, see <see cref="KeepDeviceRows"/>.</summary>
public sealed class BeginImport(OfficeDb db, DeviceFileDoor door, ImportRuns runs)
{
    /// <summary>The file whose progress <see cref="WatchImport"/> now tells of, or why it cannot begin.</summary>
    public async Task<Outcome<Guid>> Of(ImportOrder order, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(order);
        var found = await door.FindOpen(order.Student, order.File, order.Actor, stop);
        if (!found.TryGet(out var file)) return Outcome<Guid>.Refused(found.Refusals);
        if (file.Answers is null) return new Refusal("columns-unsaid", "Say first what the columns hold.");
        if (await Wrong(order, stop)) return new Refusal("lesson-not-there", "One of the lessons picked is not of this student, day and club. Pick again.");
        return runs.Begin(order) ? order.File : new Refusal("import-busy", "An import of yours is under way. Wait for its end, or stop it.");
    }

    private async Task<bool> Wrong(ImportOrder order, CancellationToken stop)
    {
        var picked = order.Into.Values.ToList();
        var there = await db.Lessons.AsNoTracking().Where(l => l.StudentId == order.Student && picked.Contains(l.Id)).Select(l => new { l.Id, l.HeldOn, l.Club }).ToListAsync(stop);
        return order.Into.Any(into => !there.Exists(l => l.Id == into.Value && DeviceGroup.KeyOf(l.HeldOn, l.Club) == into.Key));
    }
}
