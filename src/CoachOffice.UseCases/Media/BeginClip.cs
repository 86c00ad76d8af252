using CoachOffice.Data.Media;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;

namespace CoachOffice.UseCases.Media;

/// <summary>Opens a place for a clip that comes in parts. Nothing of the office changes yet, so it leaves no audit row.</summary>
public sealed class BeginClip(ClipCheck check, ClipArrivals arrivals, MediaDoor door)
{
    /// <summary>The place, or why it may not come.</summary>
    public async Task<Outcome<ClipArrival>> For(LessonId lesson, long length, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        var allowed = await check.Of(lesson, length, actor, stop);
        if (!allowed.Succeeded) return Outcome<ClipArrival>.Refused(allowed.Refusals);
        var arrival = new ClipArrival(door.NewId(), actor.Account!.Value, lesson, length, 0);
        arrivals.Begin(arrival);
        return arrival;
    }
}
