using System.Globalization;
using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Lessons;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Measuring.Answers;

/// <summary>Takes a reading the student took. Nothing is judged by it: it waits for the coach's look, and no prompt goes out meanwhile.</summary>
public sealed class AnswerRetest(OfficeDb db, ReadMyLooks looks, AnswerDay day, PlanMessages messages, AuditTrail trail)
{
    private const int MostSwings = 20;

    /// <summary>The re-test's id, or what is wrong with the reading.</summary>
    public async Task<Outcome<Guid>> From(RetestAnswer answer, LinkPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(answer);
        ArgumentNullException.ThrowIfNull(pass);
        if ((await looks.For(pass, stop))?.FirstOrDefault(l => l.Id == answer.Retest) is not { } mine) return new Refusal("look-not-found", "This number is not asked for now.");
        if (!mine.CanBeTyped) return new Refusal("look-by-coach", "This number is made of several; send a clip, or come by.", "Readings");
        if (await day.Check(pass, answer.On, stop) is { } against) return against;
        if (!Text(answer.Readings, mine).TryGet(out var text)) return Outcome<Guid>.Refused([.. Text(answer.Readings, mine).Refusals.Select(r => r with { Field = "Readings" })]);
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var look = await db.Retests.SingleAsync(r => r.Id == mine.Id, stop);
        if (look.Status != RetestStatus.Ready) return new Refusal("look-not-found", "This number is not asked for now.");
        look.TakeAnswer(text, answer.On, day.Now);
        await messages.EndAbout(look.Id, "answered", stop);
        trail.Add(Actor.Student, "retest-answered", AuditSubject.Retest(look.Id));
        if (await db.TrySave(stop) != Saved.Yes) return new Refusal(Clash.Code, "Somebody changed this at the same moment; please send it once more.");
        await transaction.CommitAsync(stop);
        return look.Id;
    }

    // Kept in the measure's own unit, whatever the practice shows later.
    private static Outcome<string> Text(string typed, MyLook look)
    {
        var read = ReadingEntry.Parse(typed, look.Unit, look.Measure, asRead: false);
        if (!read.TryGet(out var values)) return Outcome<string>.Refused(read.Refusals);
        if (values.Count is 0 or > MostSwings) return new Refusal("retest-reading", $"Give one to {MostSwings} values, one a swing, with a space between them.");
        return string.Join(" ", values.Select(v => string.Create(CultureInfo.InvariantCulture, $"{v.Value.Value:0.##} {look.Measure.Unit.Symbol}")));
    }
}
