using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Reads what the letters of plans are made of, for many plans together.</summary>
public sealed class ReadLetterSources(OfficeDb db)
{
    /// <summary>By plan.</summary>
    public async Task<IReadOnlyDictionary<PlanId, LetterSource>> Of(IReadOnlyList<Plan> plans, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(plans);
        var (ids, draftIds, lessonIds) = (plans.Select(p => p.Id).ToList(), plans.Select(p => p.DraftId).Distinct().ToList(), plans.Select(p => p.LessonId).Distinct().ToList());
        var drafts = await db.StoredDrafts.Where(d => draftIds.Contains(d.Id)).Select(d => new { d.Id, d.Json, d.RulebookSha256 }).ToDictionaryAsync(d => d.Id, stop);
        var lessons = await db.Lessons.Where(l => lessonIds.Contains(l.Id)).Select(l => new { l.Id, l.HeldOn, l.Club }).ToDictionaryAsync(l => l.Id, stop);
        var read = await Swings(lessonIds, stop);
        var went = await db.Messages.AsNoTracking().Where(m => m.PlanId != null && ids.Contains(m.PlanId.Value) && m.Kind == MessageKind.PlanDelivery && m.State == MessageState.Sent).ToListAsync(stop);
        var first = went.GroupBy(m => m.PlanId!.Value).ToDictionary(g => g.Key, g => g.MinBy(m => m.SentAt)!.StableName);
        return plans.ToDictionary(p => p.Id, p => new LetterSource(drafts[p.DraftId].Json, drafts[p.DraftId].RulebookSha256, lessons[p.LessonId].HeldOn, first.GetValueOrDefault(p.Id))
        {
            Club = lessons[p.LessonId].Club,
            Swings = read[p.LessonId].ToDictionary(r => r.Measure, r => r.Count),
        });
    }

    private async Task<ILookup<LessonId, (MeasureId Measure, int Count)>> Swings(List<LessonId> lessons, CancellationToken stop)
    {
        var counted = await db.Readings.Where(r => lessons.Contains(r.LessonId) && r.WithdrawnAt == null).GroupBy(r => new { r.LessonId, r.Measure }).Select(g => new { g.Key.LessonId, g.Key.Measure, Count = g.Count() }).ToListAsync(stop);
        return counted.ToLookup(c => c.LessonId, c => (c.Measure, c.Count));
    }
}
