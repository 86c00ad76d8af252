using CoachOffice.Data;
using CoachOffice.Domain.Lessons;
using CoachOffice.Drafting.Reading.Canonical;
using CoachOffice.Drafting.Replay;
using CoachOffice.UseCases.Lessons;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>One comparison under way: finds the lessons, follows them on two threads a chunk at a time, and keeps only counts and the rows to be shown.</summary>
internal sealed partial class ReplayRun(LessonReplay replay, IServiceScopeFactory scopes, ILogger log) : IDisposable
{
    private const int ChunkOfLessons = 200;

    private readonly CancellationTokenSource _stop = new();

    public LessonReplay Replay => replay;

    public ReplayTally Tally { get; } = new();

    public ReplayState State { get; private set; } = ReplayState.Searching;

    public int Threads { get; init; } = 2;

    /// <summary>Ends it soon; what was counted stays.</summary>
    public void Stop() => _stop.Cancel();

    /// <summary>Runs to the end, the stop, or a defect, which is logged: nobody waits for the task.</summary>
    public async Task Run()
    {
        try
        {
            await Follow(await Search());
            State = ReplayState.Done;
        }
        catch (Exception) when (_stop.IsCancellationRequested)
        {
            State = ReplayState.Stopped;
        }
        catch (Exception fault)
        {
            State = ReplayState.Failed;
            Failed(log, fault);
        }
    }

    public void Dispose() => _stop.Dispose();

    private async Task<IReadOnlyList<LessonId>> Search()
    {
        if (!replay.Reach.IsNothing) await Fill();
        await using var scope = scopes.CreateAsyncScope();
        var db = scope.ServiceProvider.GetRequiredService<OfficeDb>();
        var reached = await scope.ServiceProvider.GetRequiredService<ReachedLessons>().By(replay.Reach, _stop.Token);
        Tally.Found(await db.LessonInputs.CountAsync(_stop.Token), reached.Count);
        State = ReplayState.Comparing;
        return reached;
    }

    /// <summary>Lessons saved without an input get one first.</summary>
    private async Task Fill()
    {
        List<LessonId> missing;
        await using (var scope = scopes.CreateAsyncScope())
        {
            var db = scope.ServiceProvider.GetRequiredService<OfficeDb>();
            missing = await db.Lessons.Where(l => l.AllReadings.Any() && !db.LessonInputs.Any(i => i.LessonId == l.Id) && db.Students.Any(s => s.Id == l.StudentId && s.ErasedAt == null))
                .Select(l => l.Id).ToListAsync(_stop.Token);
        }

        foreach (var chunk in missing.Chunk(FillLessonInputs.AtOnce))
        {
            await using var scope = scopes.CreateAsyncScope();
            await scope.ServiceProvider.GetRequiredService<FillLessonInputs>().For(chunk, _stop.Token);
        }
    }

    private Task Follow(IReadOnlyList<LessonId> lessons) =>
        Parallel.ForEachAsync(lessons.Chunk(ChunkOfLessons), new ParallelOptions { MaxDegreeOfParallelism = Threads, CancellationToken = _stop.Token }, Follow);

    private async ValueTask Follow(LessonId[] chunk, CancellationToken stop)
    {
        await using var scope = scopes.CreateAsyncScope();
        var db = scope.ServiceProvider.GetRequiredService<OfficeDb>();
        var inputs = await db.LessonInputs.Where(i => chunk.Contains(i.LessonId)).Select(i => new { i.LessonId, i.StudentId, i.Json }).ToListAsync(stop);
        foreach (var input in inputs)
        {
            stop.ThrowIfCancellationRequested();
            Tally.Add(input.LessonId, input.StudentId, replay.Of(CanonicalInputReader.Read(input.Json)));
        }
    }

    [LoggerMessage(LogLevel.Error, "Comparing two rulebooks over past lessons failed.")]
    private static partial void Failed(ILogger log, Exception fault);
}
