using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Measuring.Landmarks;
using CoachOffice.Domain.Media;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Media;

/// <summary>Keeps what a person says and marks on a still.</summary>
public sealed class MarkStill(OfficeDb db, StillTakes takes, MediaConsents consents, Clash clash, MediaDoor door)
{
    /// <summary>The new version, or everything that is wrong; a clash says who marked meanwhile and shows both places of each point that differs.</summary>
    /// <param name="id">Which still.</param>
    /// <param name="version">The version the page was filled from.</param>
    /// <param name="form">As said and marked.</param>
    /// <param name="actor">Who does it.</param>
    /// <param name="stop">Ends the wait.</param>
    public async Task<Outcome<int>> As(MediaId id, int version, StillForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach) return NotAllowed.To("mark stills");
        if (await db.MediaItems.SingleOrDefaultAsync(m => m.Id == id && m.Kind == MediaKind.Still, stop) is not { } still) return MediaRefusals.NotFound;
        var student = await db.Students.AsNoTracking().SingleAsync(s => s.Id == still.StudentId, stop);
        if (MediaRefusals.Of(await consents.For(student, stop), student) is { } against) return against;
        if (StillCheck.Of(form.Shows) is { } wrong) return wrong;
        var refusals = StillCheck.Of(form.Marks, still).ToList();
        if (refusals.Count > 0) return Outcome<int>.Refused(refusals);
        var take = await takes.For(still.LessonId, form.Shows, stop);
        var marks = form.Marks with { Marks = [.. Unshown(still, take.View, form.Marks), .. form.Marks.Marks] };
        if (still.Version != version) return await Clashed(still, marks, stop);
        still.Mark(take.Id, form.Shows.Moment, marks with { Marks = [.. marks.Marks.OrderBy(m => m.Landmark)] });
        door.Note(actor, "still-marked", id, $"marks:{marks.Marks.Count}");
        if (await db.TrySave(stop) == Saved.Yes) return still.Version;
        db.ChangeTracker.Clear();
        return await db.MediaItems.AsNoTracking().SingleOrDefaultAsync(m => m.Id == id, stop) is { } now ? await Clashed(now, marks, stop) : MediaRefusals.NotFound;
    }

    // A point the page did not ask for is not taken away by not being sent.
    private static IEnumerable<Mark> Unshown(MediaItem still, Domain.Measuring.View view, StillMarks sent)
    {
        var shown = PictureMeasures.LandmarksOf(view, still.Moment!.Value);
        return (still.Marks?.Marks ?? []).Where(m => !shown.Contains(m.Landmark) && sent.At(m.Landmark) is null);
    }

    private async Task<Outcome<int>> Clashed(MediaItem kept, StillMarks yours, CancellationToken stop)
    {
        var theirs = kept.Marks ?? new StillMarks();
        var fields = Enum.GetValues<Landmark>().Select(l => new Difference($"x[{Terms.Of(l)}]", StillCheck.Named(l), Place(theirs.At(l)), Place(yours.At(l))))
            .Append(new Difference(nameof(yours.Toward), "Side of the target or ball", Terms.Of(theirs.Toward), Terms.Of(yours.Toward)))
            .Append(new Difference(nameof(yours.OffSquareDegrees), "Off square", $"{theirs.OffSquareDegrees}", $"{yours.OffSquareDegrees}"))
            .Append(new Difference(nameof(yours.KnownLengthCm), "Known length", $"{theirs.KnownLengthCm}", $"{yours.KnownLengthCm}"));
        return Outcome<int>.Refused(await clash.Over(AuditSubject.Of(kept.Id), "this still", fields, stop));
    }

    private static string Place(Pixel? at) => at is { } place ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{place.X:0.#}, {place.Y:0.#}") : "not marked";
}
