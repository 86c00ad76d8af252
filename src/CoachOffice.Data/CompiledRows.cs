namespace CoachOffice.Data;

/// <summary>The rows of a compiled query, one after the other.</summary>
internal static class CompiledRows
{
    public static async Task<List<TRow>> Gathered<TRow>(this IAsyncEnumerable<TRow> asked, CancellationToken stop)
    {
        var rows = new List<TRow>();
        await foreach (var row in asked.WithCancellation(stop)) rows.Add(row);
        return rows;
    }
}
