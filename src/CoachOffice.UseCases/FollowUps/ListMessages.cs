using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Lists messages and their state.</summary>
public sealed class ListMessages(OfficeDb db, OfficeLetters letters, ChosenMessages chosen)
{
    private const int PageSize = 50;
    private const int LastPage = 1_000_000;

    /// <summary>A page of them; pages count from 1.</summary>
    public async Task<Outcome<MessageList>> Now(MessageFilter filter, int page, Actor actor, MessageChoice? choice = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("see messages");
        var number = Math.Clamp(page, 1, LastPage);
        var from = (number - 1) * PageSize;
        var rows = await Rows(Ordered(await chosen.Of(filter, choice ?? MessageChoice.Everything, stop), filter).Skip(from).Take(PageSize + 1)).ToListAsync(stop);
        var waiting = await db.Messages.CountAsync(m => m.State == MessageState.NeedsAttention || m.State == MessageState.Unknown, stop);
        return new MessageList(await Said(rows.Take(PageSize), stop), number, rows.Count > PageSize, waiting) { Awaiting = await db.Messages.CountAsync(m => m.State == MessageState.AwaitsApproval, stop) };
    }

    /// <summary>One of them, whatever its state.</summary>
    public async Task<MessageRow> One(Guid id, CancellationToken stop = default) => (await Said(await Rows(db.Messages.Where(m => m.Id == id)).ToListAsync(stop), stop))[0];

    private async Task<IReadOnlyList<MessageRow>> Said(IEnumerable<MessageRow> rows, CancellationToken stop)
    {
        var said = rows.Select(r => r with { Problem = r.Problem is { } code ? Problems.InWords(code) : null }).ToList();
        var nameless = said.Where(r => r.StudentId is null).Select(r => r.Id).ToList();
        if (nameless.Count == 0) return said;
        foreach (var message in await db.Messages.AsNoTracking().Where(m => nameless.Contains(m.Id)).ToListAsync(stop))
        {
            var at = said.FindIndex(r => r.Id == message.Id);
            said[at] = said[at] with { Name = await letters.Addressee(message, stop) };
        }

        return said;
    }

    private static IQueryable<Message> Ordered(IQueryable<Message> messages, MessageFilter filter) =>
        filter is MessageFilter.Sent or MessageFilter.All
            ? messages.OrderByDescending(m => m.SentAt ?? m.DueAt).ThenByDescending(m => m.Id)
            : messages.OrderBy(m => m.DueAt).ThenBy(m => m.Id);

    private IQueryable<MessageRow> Rows(IQueryable<Message> messages) =>
        from message in messages
        from student in db.Students.Where(s => s.Id == message.StudentId).DefaultIfEmpty()
        select new MessageRow
        {
            Id = message.Id,
            Kind = message.Kind,
            State = message.State,
            StudentId = message.StudentId,
            Name = student == null ? "" : student.FamilyName == "" ? student.GivenName : student.GivenName + " " + student.FamilyName,
            PlanId = message.PlanId,
            DueAt = message.DueAt,
            SentAt = message.SentAt,
            Attempts = message.Attempts,
            Reason = message.Reason,
            Problem = message.LastProblem,
        };
}
