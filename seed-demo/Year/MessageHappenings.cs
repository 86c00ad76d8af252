using CoachOffice.Domain;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.FollowUps;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.SeedDemo.Year;

/// <summary>What people do with messages.</summary>
internal sealed class MessageHappenings(Scene scene)
{
    private const int DaysLater = 3;

    /// <summary>The student follows the stop link of a letter.</summary>
    public async Task StopAll(StudentLife life, CancellationToken stop)
    {
        var token = scene.Office.Door.StopOf(life.Persona.Mail) ?? throw new InvalidOperationException("No letter came with a stop link.");
        await scene.Office.Must((StopMessages messages) => messages.By(token, MessagePurpose.Encouragement, stop));
    }

    public Task Skip(StudentLife life, CancellationToken stop) => First<SkipMessage>(life, (skip, id) => skip.Now(id, "Said so in the lesson already.", life.Coach, stop), stop);

    public Task Hurry(StudentLife life, CancellationToken stop) => First<SendMessageNow>(life, (send, id) => send.Now(id, life.Coach, stop), stop);

    public Task Move(StudentLife life, LocalDate day, CancellationToken stop) =>
        First<MoveMessage>(life, (move, id) => move.To(id, day.PlusDays(DaysLater), null, life.Coach, stop), stop);

    private async Task First<TDeed>(StudentLife life, Func<TDeed, Guid, Task<Outcome<Guid>>> act, CancellationToken stop)
        where TDeed : notnull
    {
        var open = await scene.Office.Read(db => db.Messages.Where(m => m.StudentId == life.Id && m.PlanId != null && (m.State == MessageState.Waiting || m.State == MessageState.NeedsAttention))
            .OrderBy(m => m.DueAt).ThenBy(m => m.Id).Select(m => (Guid?)m.Id).FirstOrDefaultAsync(stop));
        if (open is { } id) await scene.Office.Must((TDeed deed) => act(deed, id));
    }
}
