using CoachOffice.Data.Media;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;

namespace CoachOffice.UseCases.Media;

/// <summary>Ends a clip that comes in parts; nothing of it stays.</summary>
public sealed class DropClipArrival(FindClipArrival find, ClipArrivals arrivals)
{
    /// <summary>What was there, or why not.</summary>
    public Outcome<ClipArrival> Of(LessonId lesson, Guid id, Actor actor)
    {
        var found = find.Of(lesson, id, actor);
        if (found.TryGet(out var there)) arrivals.Drop(there);
        return found;
    }
}
