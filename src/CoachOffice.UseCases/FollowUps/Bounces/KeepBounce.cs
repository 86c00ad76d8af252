using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps.Bounces;

/// <summary>Takes a notice that a mail of ours did not arrive. Found by our own Message-ID alone, whose random part nobody guesses; unknown, forged and repeated ones change nothing.</summary>
public sealed class KeepBounce(OfficeDb db, AuditTrail trail, PracticeClock clock, INewIds ids)
{
    /// <summary>True when it told something new about a message that left this office.</summary>
    public async Task<bool> Of(BounceNotice notice, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(notice);
        db.ChangeTracker.Clear();
        if (BounceReader.Status(notice.Status) is not { } status || await Found(notice.MessageId, stop) is not { } message) return false;
        var bounce = MailBounce.Of(ids.Next(), message, notice.Address, status, clock.Now);
        if (await db.MailBounces.AnyAsync(b => b.OnceKey == bounce.OnceKey, stop)) return false;
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        db.MailBounces.Add(bounce);
        trail.Add(Actor.Clock, bounce.IsHard ? "mail-bounced" : "mail-delayed", AuditSubject.Message(message.Id), status);
        if (await db.TrySave(stop) != Saved.Yes) return false;
        if (bounce.IsHard) await Ask(message, bounce.AddressSha256, stop);
        await transaction.CommitAsync(stop);
        return true;
    }

    // What came back, and what waits for the same person, needs a look; what goes to the address from elsewhere meets the law.
    private async Task Ask(Message message, string address, CancellationToken stop)
    {
        await Need(db.Messages.Where(m => m.Id == message.Id), stop);
        if (message.StudentId is not { } id) return;
        var today = await clock.Today(stop);
        var student = await db.Students.AsNoTracking().SingleAsync(s => s.Id == id, stop);
        if (student.RecipientOn(today) is not { } now || MailBounce.HashOf(now.Address) != address) return;
        IReadOnlyList<MessageKind> office = [.. Enum.GetValues<MessageKind>().Where(k => MessagePurposes.Of(k) == MessagePurpose.Office)];
        await Need(db.Messages.Where(m => m.StudentId == id && m.State == MessageState.Waiting && m.DueAt <= clock.Now && !office.Contains(m.Kind)), stop);
    }

    private static Task<int> Need(IQueryable<Message> messages, CancellationToken stop) =>
        messages.ExecuteUpdateAsync(m => m.SetProperty(x => x.State, MessageState.NeedsAttention).SetProperty(x => x.LastProblem, Problems.AddressBounced), stop);

    private async Task<Message?> Found(string messageId, CancellationToken stop)
    {
        if (messageId.Split('@') is not [var name, var host] || name.Split('.') is not [_, var hex] || !Guid.TryParseExact(hex, "N", out var id)) return null;
        if (await db.Messages.AsNoTracking().SingleOrDefaultAsync(m => m.Id == id, stop) is not { } message) return null;
        var practice = await db.Practices.AsNoTracking().SingleAsync(stop);
        var known = message.SentAt is not null || message.SendingAt is not null;
        return known && name == message.StableName && string.Equals(host, new Uri(practice.PublicAddress).Host, StringComparison.OrdinalIgnoreCase) ? message : null;
    }
}
