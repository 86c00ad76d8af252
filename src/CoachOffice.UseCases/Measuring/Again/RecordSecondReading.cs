using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Measuring.Again;

/// <summary>Keeps a second reading beside what stands from the first. The lesson's values do not change by it.</summary>
public sealed class RecordSecondReading(OfficeDb db, PlanDoor door, PlanBooks books)
{
    /// <summary>How many measures are now read twice, or what is wrong, each with its field. An empty field was not read again.</summary>
    public async Task<Outcome<int>> As(Guid id, int version, IReadOnlyList<MeasureEntry> entries, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(entries);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach || actor.Account is not { } by) return NotAllowed.To("read takes again");
        var asked = await db.SecondReadings.SingleOrDefaultAsync(s => s.Id == id, stop);
        if (asked is null) return new Refusal("second-reading-not-found", "No take waits to be read again under this address.");
        if (asked.ReadAt is not null || asked.Version != version) return Done;
        var book = await books.InForce(stop);
        var read = entries.Where(e => !string.IsNullOrWhiteSpace(e.Text)).Select(e => ReadingEntry.Take(e, book)).ToList();
        var refusals = read.SelectMany(r => r.Refusals).Concat(read.Where(r => r.Succeeded && r.Value.Count != 1).Select(r => OneSwing(r.Value[0].Measure))).ToList();
        if (refusals.Count > 0) return Outcome<int>.Refused(refusals);
        if (read.Count == 0) return new Refusal("second-reading-empty", "Read at least one measure again; leave the others empty.");
        var first = await db.Readings.AsNoTracking().Where(r => r.TakeId == asked.TakeId && r.WithdrawnAt == null).ToDictionaryAsync(r => r.Measure, stop);
        var doubles = read.Select(r => r.Value[0]).Where(t => first.ContainsKey(t.Measure))
            .Select(t => new ReadTwice(t.Measure, first[t.Measure].Instrument, first[t.Measure].Value, t.Value.In(book.Find(t.Measure)!.Unit).Value)).ToList();
        if (doubles.Count == 0) return new Refusal("second-reading-gone", "What was read first is gone from the lesson meanwhile, so there is nothing to compare with.");
        asked.Read(doubles, by, door.Now);
        door.Note(actor, "second-reading", AuditSubject.Of(asked.LessonId), $"measures:{doubles.Count}");
        return await db.TrySave(stop) == Saved.Yes ? doubles.Count : Done;
    }

    private static Refusal Done => new(Clash.Code, "Somebody read this take again just now; theirs is kept, and one second reading is enough.");

    private static Refusal OneSwing(MeasureId measure) => new("one-value", "A take shows one swing: give one value.", ReadingEntry.FieldOf(measure.Value));
}
