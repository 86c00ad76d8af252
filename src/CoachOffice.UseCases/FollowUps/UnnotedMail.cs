using System.Collections.Concurrent;
using CoachOffice.Data;
using CoachOffice.Data.FollowUps;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>
/// Notes mail that left. What could not be noted, since the disk was full or the database busy or away, this program remembers: nothing else goes out
/// before that is noted, so a mail is not sent a second time for want of a note.
/// </summary>
public sealed class UnnotedMail(IServiceScopeFactory scopes)
{
    private readonly ConcurrentQueue<SentMail> _left = new();

    /// <summary>Notes one in a scope that is open; throws what the database says, and remembers it then.</summary>
    public async Task Note(SentMail mail, IServiceProvider services)
    {
        try
        {
            await Write(mail, services);
        }
        catch
        {
            _left.Enqueue(mail);
            throw;
        }
    }

    /// <summary>Notes what is left over; throws what the database says as long as that does not go.</summary>
    public async Task Settle()
    {
        while (_left.TryPeek(out var mail))
        {
            await using var scope = scopes.CreateAsyncScope();
            await Write(mail, scope.ServiceProvider);
            _left.TryDequeue(out _);
        }
    }

    // Whatever stops the program or the sweep: what is known is noted.
    private static async Task Write(SentMail mail, IServiceProvider services)
    {
        var outbox = services.GetRequiredService<IOutbox>();
        if (mail.AfterSent is not { } after)
        {
            await outbox.MarkSent(mail.Sending, CancellationToken.None);
            return;
        }

        var db = services.GetRequiredService<OfficeDb>();
        db.ChangeTracker.Clear();
        await using var transaction = await db.Database.BeginTransactionAsync();
        if (await outbox.MarkSent(mail.Sending, CancellationToken.None))
        {
            await after(services);
            await db.SaveChangesAsync();
        }

        await transaction.CommitAsync();
    }
}
