using System.Data.Common;
using CoachOffice.Domain;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.Data.Moving;

/// <summary>
/// Brings a whole practice from one database into another, empty one, of whichever kind: every table in one transaction, read again and compared before it is
/// committed. Nothing is changed where it came from. Files beside the database stay where they are.
/// </summary>
public sealed class MoveOffice(OfficeDatabase from, OfficeDatabase to)
{
    /// <summary>True while nobody may write where it comes from; a copy taken of an office at work reads one moment of it instead.</summary>
    public bool Still { get; init; } = true;

    /// <summary>Called once the moment is fixed that is read, before the first table.</summary>
    internal Func<OfficeDb, CancellationToken, Task> AtThatMoment { get; init; } = static (_, _) => Task.CompletedTask;

    /// <summary>The comparison of every table, or why nothing was moved.</summary>
    public async Task<Outcome<IReadOnlyList<MovedPrint>>> Now(IProgress<MovedPrint>? progress = null, CancellationToken stop = default)
    {
        if (from == to) return new Refusal("move-same", "Both ends name the same database.");
        await using var source = new MoveSide(from);
        if (await source.IsOffice(stop) is { } notThere) return notThere;
        await using var target = new MoveSide(to);
        if (await target.Prepare(stop) is { } refusal) return refusal;
        await source.Mover.BeginReading(source.Tables, Still, stop);
        await AtThatMoment(source.Db, stop);
        await target.Mover.BeginWriting(target.Tables, stop);
        if (await target.Filled(stop) is { Count: > 0 } filled) return NotEmpty(filled);
        return await Move(source, target, progress, stop);
    }

    private static async Task<Outcome<IReadOnlyList<MovedPrint>>> Move(MoveSide source, MoveSide target, IProgress<MovedPrint>? progress, CancellationToken stop)
    {
        var prints = new List<MovedPrint>();
        foreach (var (here, there) in Pairs(source, target))
        {
            var sum = new TableSum(here);
            if (await Write(target, there, source.Db.Rows(here, sum, stop), stop) is { } refused) return refused;
            await target.Mover.CountOn(there, stop);
            var print = new MovedPrint(sum.Print(), await target.Db.Print(there, stop));
            progress?.Report(print);
            prints.Add(print);
        }

        if (prints.FirstOrDefault(p => !p.Same) is { } other)
            return new Refusal("move-differs", $"The table {other.To.Table} does not read the same after it was moved ({other.From.Rows} rows became {other.To.Rows}). Nothing was moved.");
        await target.Db.Database.CommitTransactionAsync(stop);
        return prints;
    }

    private static async Task<Refusal?> Write(MoveSide target, MovedTable table, IAsyncEnumerable<object?[]> rows, CancellationToken stop)
    {
        try
        {
            await target.Mover.Write(table, rows, stop);
            return null;
        }
        catch (DbException fault)
        {
            return new Refusal("move-refused", $"The table {table.Name} could not be written: {fault.Message} Nothing was moved.");
        }
    }

    // Both sides order their tables by what points where, and columns by name.
    private static IEnumerable<(MovedTable Here, MovedTable There)> Pairs(MoveSide source, MoveSide target) =>
        from there in target.Tables
        join here in source.Tables on there.Name equals here.Name
        select (here, there);

    private static Refusal NotEmpty(IReadOnlyList<string> filled) => new(
        "move-not-empty",
        $"The database the practice should go to holds rows already (in {string.Join(", ", filled.Take(4))}{(filled.Count > 4 ? ", …" : "")}). Make an empty one: nothing is ever mixed or written over.");
}
