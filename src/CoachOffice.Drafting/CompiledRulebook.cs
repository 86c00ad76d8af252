using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Ordering;
using CoachOffice.Drafting.Patterns;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.Drafting;

/// <summary>A rulebook ready to draft by: its patterns compiled into rules. Immutable; any number of threads may draft by it at once.</summary>
public sealed class CompiledRulebook
{
    private readonly PatternIndex _index;

    private CompiledRulebook(LoadedRulebook loaded, PatternNetwork network)
    {
        Loaded = loaded;
        Network = network;
        Laws = new TrainAfterLaws(loaded.Book.TrainAfter);
        _index = new PatternIndex(loaded.Book);
    }

    /// <summary>The book as it was read, with its text and its hash.</summary>
    public LoadedRulebook Loaded { get; }

    /// <summary>The book.</summary>
    public Rulebook Book => Loaded.Book;

    /// <summary>SHA-256 of the book's meaning, lower-case hexadecimal.</summary>
    public string Sha256 => Loaded.Sha256;

    internal PatternNetwork Network { get; }

    internal TrainAfterLaws Laws { get; }

    /// <summary>Compiles a book that was read without a fault.</summary>
    /// <param name="loaded">The book.</param>
    /// <param name="like">A book that is much the same, e.g. before an edit: what both test alike is taken from it instead of being compiled again.</param>
    public static CompiledRulebook Compile(LoadedRulebook loaded, CompiledRulebook? like = null)
    {
        ArgumentNullException.ThrowIfNull(loaded);
        return new CompiledRulebook(loaded, PatternNetwork.Compile(loaded.Book, like?.Network));
    }

    /// <summary>The same rules read from another text, which need not be compiled again; throws <see cref="ArgumentException"/> when the other text says something else.</summary>
    public CompiledRulebook ReadFrom(LoadedRulebook same)
    {
        ArgumentNullException.ThrowIfNull(same);
        return same.Sha256 == Sha256 ? new CompiledRulebook(same, Network) : throw new ArgumentException("That text says something else.", nameof(same));
    }

    /// <summary>The patterns that fire in a lesson by the rule engine, by precedence, then id.</summary>
    public IReadOnlyList<Pattern> Fire(LessonContext lesson) => Network.Fire(lesson);

    /// <summary>What the patterns have to say of a lesson: which fire by the rule engine, and which nearly do.</summary>
    internal Judged Judge(LessonContext lesson)
    {
        var fired = Network.Fire(lesson);
        return new Judged(fired, _index.Near(lesson, fired));
    }
}
