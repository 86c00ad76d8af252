using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Messages of a choice, as a query.</summary>
public sealed class ChosenMessages(OfficeDb db, PracticeClock clock)
{
    /// <summary>Where they stand, and of which kind, student and day.</summary>
    public async Task<IQueryable<Message>> Of(MessageFilter filter, MessageChoice choice, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(choice);
        var messages = Standing(filter);
        if (choice.Kind is { } kind) messages = messages.Where(m => m.Kind == kind);
        if (choice.Student is { } student) messages = messages.Where(m => m.StudentId == student);
        if (choice.Day is not { } day) return messages;
        var zone = await clock.Zone(stop);
        var (from, until) = (zone.AtStartOfDay(day).ToInstant(), zone.AtStartOfDay(day.PlusDays(1)).ToInstant());

        // What is overdue stands on today's list: it goes with the next sweep.
        return day == await clock.Today(stop) ? messages.Where(m => m.DueAt < until) : messages.Where(m => m.DueAt >= from && m.DueAt < until);
    }

    private IQueryable<Message> Standing(MessageFilter filter) => filter switch
    {
        MessageFilter.NeedsAttention => db.Messages.Where(m => m.State == MessageState.NeedsAttention || m.State == MessageState.Unknown),
        MessageFilter.AwaitsApproval => db.Messages.Where(m => m.State == MessageState.AwaitsApproval),
        MessageFilter.Sent => db.Messages.Where(m => m.State == MessageState.Sent),
        MessageFilter.All => db.Messages,
        _ => db.Messages.Where(m => m.State == MessageState.Waiting || m.State == MessageState.Held),
    };
}
