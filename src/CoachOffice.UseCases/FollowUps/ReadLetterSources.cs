using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
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
        var lessons = await db.Lessons.Where(l => lessonIds.Contains(l.Id)).Select(l => new { l.Id, l.HeldOn }).ToDictionaryAsync(l => l.Id, l => l.HeldOn, stop);
        var went = await db.Messages.AsNoTracking().Where(m => m.PlanId != null && ids.Contains(m.PlanId.Value) && m.Kind == MessageKind.PlanDelivery && m.State == MessageState.Sent).ToListAsync(stop);
        var first = went.GroupBy(m => m.PlanId!.Value).ToDictionary(g => g.Key, g => g.MinBy(m => m.SentAt)!.StableName);
        return plans.ToDictionary(p => p.Id, p => new LetterSource(drafts[p.DraftId].Json, drafts[p.DraftId].RulebookSha256, lessons[p.LessonId], first.GetValueOrDefault(p.Id)));
    }
}
