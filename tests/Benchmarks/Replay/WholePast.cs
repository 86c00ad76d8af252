using CoachOffice.Benchmarks.Office;
using CoachOffice.Data;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting;
using CoachOffice.Drafting.Reading.Canonical;
using CoachOffice.Drafting.Replay;
using CoachOffice.UseCases.Rulebook;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;

namespace CoachOffice.Benchmarks.Replay;

/// <summary>Ways of telling what an edit changes over a practice's past, each on so many threads.</summary>
internal sealed class WholePast(OpenOffice office, CompiledRulebook inForce)
{
    private const int Chunk = 200;

    /// <summary>As the office does it, with every cut-off.</summary>
    public async Task<ReplayTally> AsTheOfficeDoes(CompiledRulebook edited, int threads, Func<ReplayRun, Task>? beside = null)
    {
        using var run = new ReplayRun(LessonReplay.Between(inForce, edited), office.Scopes, NullLogger.Instance) { Threads = threads };
        var running = run.Run();
        if (beside is not null) await beside(run);
        await running;
        return run.State is ReplayState.Done ? run.Tally : throw new InvalidOperationException($"The comparison ended {run.State}.");
    }

    /// <summary>Reads these lessons as the office does, drafts each by both books and compares; how many differ.</summary>
    public async Task<int> InFull(CompiledRulebook edited, IReadOnlyList<LessonId> lessons, int threads)
    {
        var (replay, differ) = (LessonReplay.Between(inForce, edited), 0);
        await Parallel.ForEachAsync(lessons.Chunk(Chunk), new ParallelOptions { MaxDegreeOfParallelism = threads }, async (chunk, _) =>
        {
            foreach (var json in await Inputs(chunk))
                if (replay.InFull(CanonicalInputReader.Read(json)).Difference is not null) Interlocked.Increment(ref differ);
        });
        return differ;
    }

    /// <summary>Drafts lessons held in memory by both books, and no more.</summary>
    public async Task<int> OnlyDrafting(CompiledRulebook edited, IReadOnlyList<LessonFacts> lessons, int threads)
    {
        var stages = 0;
        await Parallel.ForEachAsync(lessons.Chunk(Chunk), new ParallelOptions { MaxDegreeOfParallelism = threads }, (chunk, _) =>
        {
            Interlocked.Add(ref stages, chunk.Sum(facts => Drafter.Draft(inForce, facts).Stages.Count + Drafter.Draft(edited, facts).Stages.Count));
            return ValueTask.CompletedTask;
        });
        return stages;
    }

    /// <summary>At most so many lessons, evenly over all there are.</summary>
    public async Task<IReadOnlyList<LessonId>> Spread(int most)
    {
        var all = await office.Do((OfficeDb db) => db.LessonInputs.OrderBy(i => i.LessonId).Select(i => i.LessonId).ToListAsync());
        var step = Math.Max(1, (double)all.Count / most);
        return [.. Enumerable.Range(0, Math.Min(most, all.Count)).Select(n => all[(int)(n * step)])];
    }

    public async Task<IReadOnlyList<LessonFacts>> Facts(IReadOnlyList<LessonId> lessons) => [.. (await Inputs([.. lessons])).Select(CanonicalInputReader.Read)];

    private Task<List<string>> Inputs(LessonId[] lessons) => office.Do((OfficeDb db) => db.LessonInputs.Where(i => lessons.Contains(i.LessonId)).Select(i => i.Json).ToListAsync());
}
