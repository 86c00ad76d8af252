using CoachOffice.Domain.Lessons.Imports;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>What a look through a whole column shows.</summary>
internal sealed class ColumnFacts
{
    /// <summary>A column with more different words than this names no club.</summary>
    public const int MostWords = 40;

    private const int Samples = 3;
    private const int LongestWord = 40;

    private readonly HashSet<string> _words = new(StringComparer.OrdinalIgnoreCase);
    private readonly HashSet<DayOrder> _orders = [];
    private bool _needsOrder;

    /// <summary>How its numbers write their decimals.</summary>
    public MarkEvidence Marks { get; } = new();

    /// <summary>Its different words, in the order met; too many of them are cut off.</summary>
    public IReadOnlyCollection<string> Words => _words;

    /// <summary>True when it holds few enough words to choose a club for each.</summary>
    public bool HasFewWords => _words.Count is > 0 and <= MostWords;

    /// <summary>The first values, to know the column by.</summary>
    public List<string> First { get; } = [];

    /// <summary>The order of day and month when its days show it; null also when no day needs one.</summary>
    public DayOrder? ShownOrder => _orders.Count == 1 ? _orders.First() : null;

    /// <summary>True when days stand there that can be read two ways, and no other day settles it.</summary>
    public bool AsksForOrder => _needsOrder && _orders.Count != 1;

    /// <summary>A cell as a word for a club.</summary>
    public static string WordOf(string cell) => cell.Length <= LongestWord ? cell : cell[..LongestWord];

    public void Look(string cell)
    {
        if (cell.Length == 0) return;
        Marks.Look(cell);
        if (First.Count < Samples) First.Add(cell.Length <= 24 ? cell : cell[..24] + "...");
        if (_words.Count <= MostWords) _words.Add(WordOf(cell));
        if (!DayCell.NeedsOrder(cell, out var shown)) return;
        _needsOrder = true;
        if (shown is { } order) _orders.Add(order);
    }
}
