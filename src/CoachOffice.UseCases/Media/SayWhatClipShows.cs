using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Media;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Media;

/// <summary>Says which take of its lesson a clip shows, so that whoever reads the take again finds it.</summary>
public sealed class SayWhatClipShows(OfficeDb db, StillTakes takes, MediaConsents consents, MediaDoor door)
{
    /// <summary>The take, or why not.</summary>
    public async Task<Outcome<TakeId>> Of(MediaId id, View view, int swing, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach) return NotAllowed.To("say what clips show");
        if (view is not (View.FaceOn or View.DownTheLine)) return new Refusal("clip-view", "A clip is filmed face-on or down the line.", "View");
        if (swing is < 1 or > StillCheck.MostSwings) return new Refusal("clip-swing", $"Number the swing from 1 to {StillCheck.MostSwings}.", "Swing");
        if (await db.MediaItems.SingleOrDefaultAsync(m => m.Id == id && m.Kind == MediaKind.Clip, stop) is not { } clip) return MediaRefusals.NotFound;
        var student = await db.Students.AsNoTracking().SingleAsync(s => s.Id == clip.StudentId, stop);
        if (MediaRefusals.Of(await consents.For(student, stop), student) is { } against) return against;
        var take = await takes.For(clip.LessonId, view, swing, stop);
        clip.Shows(take.Id);
        door.Note(actor, "clip-shows", clip.Id, $"swing:{swing}");
        return await db.TrySave(stop) == Saved.Yes ? take.Id : MediaRefusals.Busy;
    }
}
