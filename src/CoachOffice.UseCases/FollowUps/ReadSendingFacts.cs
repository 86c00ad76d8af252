using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Reads what decides about claimed messages of plans, fresh and for all of them together: a query a table, however many they are.</summary>
public sealed class ReadSendingFacts(OfficeDb db, PracticeDays days, ReadLetterSources sources, MessageSurroundings around)
{
    private static readonly Duration Lately = Duration.FromDays(60);

    /// <summary>The facts as they stand now, by the message's id.</summary>
    public async Task<IReadOnlyDictionary<Guid, SendingFacts>> For(IReadOnlyList<Message> messages, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(messages);
        if (messages.Count == 0) return new Dictionary<Guid, SendingFacts>();
        var planIds = messages.Select(m => m.PlanId ?? throw new ArgumentException("This message belongs to no plan.", nameof(messages))).Distinct().ToList();
        var studentIds = messages.Select(m => m.StudentId!.Value).Distinct().ToList();
        var plans = await db.Plans.AsNoTracking().Include(p => p.Stages).Where(p => planIds.Contains(p.Id)).ToDictionaryAsync(p => p.Id, stop);
        var students = await db.Students.AsNoTracking().Where(s => studentIds.Contains(s.Id)).ToDictionaryAsync(s => s.Id, stop);
        var (practice, now, dates, bounced) = await around.Now(stop);
        var (looks, notes) = (await Looks(planIds, stop), await Notes(planIds, stop));
        var (taught, sent) = (await Taught(studentIds, stop), await Sent(studentIds, now - Lately, stop));
        var (letters, words) = (await sources.Of([.. plans.Values], stop), await around.WordsOf(messages, stop));
        return messages.ToDictionary(m => m.Id, message => new SendingFacts
        {
            Message = message,
            Plan = plans[message.PlanId!.Value],
            Student = students[message.StudentId!.Value],
            Practice = practice,
            Looks = [.. looks[message.PlanId.Value]],
            Now = now,
            Dates = dates,
            Bounced = bounced,
            LastPractice = Last(notes[message.PlanId.Value], dates),
            LastNote = notes[message.PlanId.Value].Select(n => (Instant?)n.At).Max(),
            Taught = [.. taught[message.StudentId.Value]],
            Sent = [.. sent[message.StudentId.Value]],
            Letter = letters[message.PlanId.Value],
            Words = words[message.Id],
        });
    }

    private async Task<ILookup<PlanId, Retest>> Looks(List<PlanId> plans, CancellationToken stop) =>
        (await db.Retests.AsNoTracking().Where(r => plans.Contains(r.PlanId) && r.Status == RetestStatus.Ready).OrderBy(r => r.DueOn).ThenBy(r => r.Id).ToListAsync(stop)).ToLookup(r => r.PlanId);

    private async Task<ILookup<PlanId, Note>> Notes(List<PlanId> plans, CancellationToken stop) =>
        (await db.CheckIns.Where(c => plans.Contains(c.PlanId)).Select(c => new Note(c.PlanId, c.At, c.PracticedOn, c.Minutes)).ToListAsync(stop)).ToLookup(n => n.PlanId);

    private async Task<ILookup<StudentId, LocalDate>> Taught(List<StudentId> students, CancellationToken stop)
    {
        var since = await days.TaughtSince(stop);
        var lessons = await db.Lessons.Where(l => students.Contains(l.StudentId) && l.Kind == LessonKind.Lesson && l.HeldOn >= since).Select(l => new { l.StudentId, l.HeldOn }).Distinct().ToListAsync(stop);
        return lessons.ToLookup(l => l.StudentId, l => l.HeldOn);
    }

    private async Task<ILookup<StudentId, SentBefore>> Sent(List<StudentId> students, Instant since, CancellationToken stop)
    {
        var sent = await db.Messages.Where(m => m.StudentId != null && students.Contains(m.StudentId.Value) && m.State == MessageState.Sent && m.SentAt >= since)
            .Select(m => new { m.StudentId, m.Kind, m.PlanId, m.SentAt }).ToListAsync(stop);
        return sent.ToLookup(m => m.StudentId!.Value, m => new SentBefore(m.Kind, m.PlanId, m.SentAt!.Value));
    }

    private static Instant? Last(IEnumerable<Note> notes, FollowUpDates dates) =>
        notes.Where(n => n.Minutes > 0).OrderByDescending(n => n.PracticedOn).ThenByDescending(n => n.At).FirstOrDefault() is { } last ? dates.PracticeEnd(last.At, last.PracticedOn) : null;

    private sealed record Note(PlanId PlanId, Instant At, LocalDate PracticedOn, int Minutes);
}
