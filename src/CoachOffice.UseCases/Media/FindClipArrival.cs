using CoachOffice.Data.Media;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Media;

/// <summary>How far a clip is that comes in parts; only whoever began it sees it.</summary>
public sealed class FindClipArrival(ClipArrivals arrivals)
{
    /// <summary>What is there of it, or why not.</summary>
    public Outcome<ClipArrival> Of(LessonId lesson, Guid id, Actor actor)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach) return NotAllowed.To("add clips");
        return arrivals.Find(id) is { } there && there.By == actor.Account && there.Lesson == lesson ? there : MediaRefusals.NotFound;
    }
}
