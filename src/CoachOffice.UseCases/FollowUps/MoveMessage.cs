using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Puts a message, and the re-test it speaks of, on another day.</summary>
public sealed class MoveMessage(OfficeDb db, MessageDoor door, PracticeDays days)
{
    /// <summary>The message's id, or why not. Without a time it goes out in the morning.</summary>
    public async Task<Outcome<Guid>> To(Guid message, LocalDate day, LocalTime? time, Actor actor, CancellationToken stop = default)
    {
        var (dates, today) = (await days.Dates(stop), await days.Today(stop));
        if (day < today || day > today.PlusYears(1)) return new Refusal("message-day", "Pick a day from today on, within a year.", "Day");
        var due = dates.At(day, time ?? FollowUpDates.SendingTime);
        if (dates.IsQuiet(due)) return new Refusal("message-quiet", "Nothing goes out between eight in the evening and eight in the morning; pick a time in between.", "Time");
        return await door.Change(new MessageDeed(message, actor, "message-moved", "move messages"), (found, row) => Move(found, row, due, stop), stop);
    }

    private async Task<Refusal?> Move(Message message, IQueryable<Message> row, Instant due, CancellationToken stop)
    {
        if (message.State is MessageState.NeedsAttention or MessageState.Unknown) return new("message-needs-attention", "This message needs a look first; send it again or leave it out.");
        await row.ExecuteUpdateAsync(m => m.SetProperty(x => x.DueAt, due).SetProperty(x => x.AtOnce, false), stop);
        if (message.SubjectId is not { } subject) return null;
        var day = (await days.Dates(stop)).DayOf(due);
        await db.Retests.Where(r => r.Id == subject && r.Status == RetestStatus.Ready).ExecuteUpdateAsync(r => r.SetProperty(x => x.DueOn, day), stop);
        return null;
    }
}
