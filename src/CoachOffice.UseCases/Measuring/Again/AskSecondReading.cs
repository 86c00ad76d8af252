using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Measuring.Again;

/// <summary>Asks for a take to be read a second time, by whoever picks it up.</summary>
public sealed class AskSecondReading(OfficeDb db, PlanDoor door)
{
    /// <summary>The request's id, or why not. One that waits already is the same request.</summary>
    public async Task<Outcome<Guid>> Of(LessonId lesson, TakeId take, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach || actor.Account is not { } by) return NotAllowed.To("ask for second readings");
        var found = await db.Takes.AsNoTracking().SingleOrDefaultAsync(t => t.Id == take && t.LessonId == lesson, stop);
        if (found is null) return new Refusal("take-not-found", "This lesson has no such take.");
        if (!await db.Readings.AnyAsync(r => r.TakeId == take && r.WithdrawnAt == null, stop))
            return new Refusal("take-not-read", "Nothing stands that was read from this take, so there is nothing to read again. Read it first.");
        if (await db.SecondReadings.Where(s => s.TakeId == take && s.ReadAt == null).Select(s => (Guid?)s.Id).FirstOrDefaultAsync(stop) is { } waiting) return waiting;
        var first = await db.Lessons.Where(l => l.Id == lesson).Select(l => l.CoachId).SingleAsync(stop);
        var asked = SecondReading.Ask(door.NewId(), found, first, by, door.Now);
        db.SecondReadings.Add(asked);
        door.Note(actor, "second-reading-asked", AuditSubject.Of(lesson), $"swing:{found.Swing}");
        await db.SaveChangesAsync(stop);
        return asked.Id;
    }
}
