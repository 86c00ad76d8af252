using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Lessons;

/// <summary>Says how fast a take's video runs. It is part of the error of what was read from it, so the lesson is graded anew.</summary>
public sealed class SetFrameRate(OfficeDb db, PlanDoor door, PlanBooks books, LessonInputs inputs)
{
    private const double Slowest = 10;
    private const double Fastest = 10_000;

    /// <summary>The lesson, or why not.</summary>
    /// <param name="typed">Frames a second as typed; empty when nobody knows.</param>
    public async Task<Outcome<LessonId>> Of(LessonId lesson, TakeId take, string? typed, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach) return NotAllowed.To("record lessons");
        var kept = await db.Lessons.Include(l => l.AllReadings).SingleOrDefaultAsync(l => l.Id == lesson, stop);
        if (kept is null) return new Refusal("lesson-not-found", "There is no such lesson.");
        await db.Entry(kept).Collection(l => l.Takes).LoadAsync(stop);
        if (kept.Takes.FirstOrDefault(t => t.Id == take) is not { } found) return new Refusal("take-not-found", "This lesson has no such take.");
        FramesPerSecond? rate = null;
        if (!string.IsNullOrWhiteSpace(typed))
        {
            if (!NumberEntry.One(typed).TryGet(out var frames) || frames is < Slowest or > Fastest)
                return new Refusal("frame-rate", "Frames a second lie between 10 and 10000, such as 240.", "FrameRate");
            rate = new FramesPerSecond(frames);
        }

        kept.RunsAt(found, rate, door.Ids, door.Now);
        await inputs.Keep(kept, await books.InForce(stop), stop);
        door.Note(actor, "take-frame-rate", AuditSubject.Of(lesson), $"swing:{found.Swing}");
        return await db.TrySave(stop) == Saved.Yes ? lesson : new Refusal(Clash.Code, "The lesson was saved by somebody else at the same moment; look at it again.");
    }
}
