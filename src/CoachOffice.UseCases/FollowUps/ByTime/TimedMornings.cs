using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.UseCases.FollowUps.ByTime;

/// <summary>Morning lists of coaches who asked for one: the next one of each. Whether it has anything to say is seen when it is due.</summary>
public sealed class TimedMornings(OfficeDb db, ReadMessageRules rules, PracticeClock clock) : ITimedMessages
{
    /// <inheritdoc/>
    public async Task<IReadOnlyList<DueMessage>> Due(CancellationToken stop)
    {
        var (hour, dates, today) = ((await rules.Of(MessageKind.MorningList, stop)).Timing, new FollowUpDates(await clock.Zone(stop)), await clock.Today(stop));
        var time = new LocalTime(hour, 0);
        var day = dates.At(today, time) > clock.Now ? today : today.PlusDays(1);
        var coaches = await db.Users.Where(u => u.WantsMorningList && u.DisabledAt == null).Select(u => u.Id).ToListAsync(stop);
        return
        [
            .. coaches.Select(coach => new DueMessage
            {
                Kind = MessageKind.MorningList,
                StudentId = null,
                SubjectId = coach,
                DueAt = dates.At(day, time),
                AtOnce = true,
                Reason = "the coach asked for a list each morning that has something for them",
                Occasion = LocalDatePattern.Iso.Format(day),
            }),
        ];
    }
}
