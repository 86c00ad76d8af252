namespace CoachOffice.Benchmarks.Measuring;

/// <summary>A Markdown table.</summary>
internal sealed class Table(params string[] heads)
{
    private readonly List<string[]> _rows = [];

    public void Add(params string[] cells) => _rows.Add(cells);

    public Task Print(TextWriter output)
    {
        IEnumerable<string[]> lines = [heads, [.. heads.Select(_ => "---")], .. _rows];
        return output.WriteLineAsync(string.Join('\n', lines.Select(l => $"| {string.Join(" | ", l)} |")) + "\n");
    }
}
