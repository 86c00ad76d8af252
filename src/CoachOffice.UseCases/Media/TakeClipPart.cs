using CoachOffice.Data.Media;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;

namespace CoachOffice.UseCases.Media;

/// <summary>Takes a part of a clip; with the last one the clip is added to its lesson.</summary>
public sealed class TakeClipPart(FindClipArrival find, ClipArrivals arrivals, AddClip add)
{
    /// <summary>How far it is now, or why the part was not taken.</summary>
    public async Task<Outcome<ClipArrival>> Of(LessonId lesson, Guid id, long offset, Stream part, Actor actor, CancellationToken stop = default)
    {
        var found = find.Of(lesson, id, actor);
        if (!found.TryGet(out var there)) return found;
        if (there.Offset != offset) return new Refusal("clip-offset", $"The office has {there.Offset} bytes of this clip; go on from there.");
        if (await arrivals.Append(there, part, stop) is not { } now) return new Refusal("clip-busy", "A part of this clip is being written; ask again how far it is.");
        if (!now.IsWhole) return now;
        var added = await Add(now, actor);
        arrivals.Drop(now);
        return added.Succeeded ? now : Outcome<ClipArrival>.Refused(added.Refusals);
    }

    // All bytes are there: whoever hangs up now still has the clip added.
    private async Task<Outcome<Domain.Media.MediaId>> Add(ClipArrival whole, Actor actor)
    {
        await using var bytes = arrivals.Open(whole);
        return await add.To(whole.Lesson, bytes, actor, CancellationToken.None);
    }
}
