namespace CoachOffice.Drafting.Checks;

/// <summary>
/// What the checks of a rulebook asked about where patterns fire, and the answers, by all that each rests on (<see cref="Algebra.Grounds"/>). A book of which a little was edited asks most of it again in the same words,
/// so it is given the answers of the book before; one whose grounds changed has other words and is worked out. An object answers for one run of the checks.
/// </summary>
/// <param name="before">Those of a book that is much the same; null for none.</param>
public sealed class KnownAnswers(KnownAnswers? before = null)
{
    private readonly Dictionary<string, object> _before = before?._mine ?? [];
    private readonly Dictionary<string, object> _mine = new(StringComparer.Ordinal);

    /// <summary>How many had to be worked out, for tests and benchmarks.</summary>
    public int WorkedOut { get; private set; }

    /// <summary>Every question asked, with its answer.</summary>
    internal IReadOnlyDictionary<string, object> All => _mine;

    internal T Of<T>(string question, Func<T> work)
        where T : notnull
    {
        if (_mine.TryGetValue(question, out var known)) return (T)known;
        if (!_before.TryGetValue(question, out known))
        {
            known = work();
            WorkedOut++;
        }

        _mine[question] = known;
        return (T)known;
    }
}
