using CoachOffice.Data.FollowUps;
using CoachOffice.Domain;
using CoachOffice.Domain.Students;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>
/// Sends what is due: one sender, one message after the other, the next batch prepared meanwhile. Any number of sweeps at once, on any number of machines, send each message once.
/// </summary>
public sealed partial class SweepMessages(IServiceScopeFactory scopes, MailDoors doors, TimeProvider time, INewIds ids, ILogger<SweepMessages> log)
{
    private const int Most = 64;

    // The next sweep goes on; what else is due each minute is not kept waiting.
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(45);

    /// <summary>One sweep.</summary>
    public async Task<SweepResult> Once(CancellationToken stop)
    {
        await using var scope = scopes.CreateAsyncScope();
        var owner = $"sweep-{ids.Next():N}";
        await scope.ServiceProvider.GetRequiredService<UnnotedMail>().Settle();
        await using var turn = await scope.ServiceProvider.GetRequiredService<IOutbox>().Turn(owner, Now, stop);
        if (turn is null) return SweepResult.Nothing;
        try
        {
            return await Batches(owner, stop);
        }
        finally
        {
            await doors.Rest();
        }
    }

    private Instant Now => Instant.FromDateTimeOffset(time.GetUtcNow());

    // All that is written is written here, between two messages: a second writer at the same time would make the sender wait for the database each time they meet.
    private async Task<SweepResult> Batches(string owner, CancellationToken stop)
    {
        var (began, result) = (time.GetTimestamp(), SweepResult.Nothing);
        var present = await Claim(owner);
        await Ready(present, present.Batch.Prepare(new HashSet<StudentId>()));
        while (!present.Batch.IsEmpty)
        {
            var goesOn = !stop.IsCancellationRequested && time.GetElapsedTime(began) < Longest;
            var next = goesOn ? await After(present, owner) : null;
            var preparing = next is null ? Task.CompletedTask : Task.Run(() => next.Batch.Prepare(present.Batch.Students), CancellationToken.None);
            result = result.And(await Deliver(present, next, preparing, stop));
            if (next is null) return result;
            if (result.EndsEarly) return await End(next, preparing, result);
            await Ready(next, preparing);
            present = next;
        }

        await present.DisposeAsync();
        return result;
    }

    private async Task<HeldBatch> After(HeldBatch present, string owner)
    {
        try
        {
            return await Claim(owner);
        }
        catch
        {
            await present.DisposeAsync();
            throw;
        }
    }

    private async Task<HeldBatch> Claim(string owner)
    {
        var held = new HeldBatch(scopes.CreateAsyncScope());
        try
        {
            await held.Batch.Claim(new ClaimOrder(Now, doors.Times.Lease, owner, Most), doors.Times);
            return held;
        }
        catch
        {
            await held.DisposeAsync();
            throw;
        }
    }

    private static async Task Ready(HeldBatch held, Task preparing)
    {
        try
        {
            await preparing;
            await held.Batch.Keep();
        }
        catch
        {
            await held.DisposeAsync();
            throw;
        }
    }

    private static async Task<SweepResult> Deliver(HeldBatch present, HeldBatch? next, Task preparing, CancellationToken stop)
    {
        await using var _ = present;
        try
        {
            var result = await present.Batch.Deliver(stop);
            await present.Batch.PutBack();
            return result;
        }
        catch
        {
            // Nothing more goes out until it is known why; whatever is still held is free again with its lease.
            await preparing.ContinueWith(static _ => { }, TaskScheduler.Default);
            if (next is not null) await next.DisposeAsync();
            throw;
        }
    }

    private async Task<SweepResult> End(HeldBatch next, Task preparing, SweepResult result)
    {
        await using var _ = next;
        await preparing;
        await next.Batch.PutBack();
        if (result.ServerDown) LogServerDown(log);
        return result;
    }

    [LoggerMessage(Level = LogLevel.Warning, Message = "Mail could not leave; it is tried again later.")]
    private static partial void LogServerDown(ILogger log);

    /// <summary>A batch with the scope it lives in.</summary>
    private sealed class HeldBatch(AsyncServiceScope scope) : IAsyncDisposable
    {
        public MailBatch Batch { get; } = scope.ServiceProvider.GetRequiredService<MailBatch>();

        public ValueTask DisposeAsync() => scope.DisposeAsync();
    }
}
