using CoachOffice.Domain.Plans;
using CoachOffice.Drafting;
using CoachOffice.Drafting.Checks;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>
/// What this program has read, compiled and thought of rulebooks lately, so that an edit costs what it touches and not what the book holds. Nothing on it is ever out of date:
/// all of it follows from texts alone and lies under those very texts. Which edition is in force is never asked of it.
/// </summary>
public sealed class BookShelf
{
    /// <summary>A person edits one book, and two or three persons at most do at once.</summary>
    private const int Most = 4;

    private readonly FilesRead _files = new();
    private readonly LastAsked<RulebookText> _shipped = new(Most);
    private readonly LastAsked<LoadedRulebook> _editions = new(Most);
    private readonly LastAsked<TriedBook> _tried = new(Most);
    private volatile CompiledRulebook? _like;
    private volatile KnownAnswers? _answers;

    /// <summary>Reads a book; shipped files that were read before are not parsed again.</summary>
    internal ReadResult<LoadedRulebook> Read(RulebookText text) => RulebookReader.Load(text, _files);

    /// <summary>Compiles a book; what the one compiled before it tests too is taken from there.</summary>
    internal CompiledRulebook Compile(LoadedRulebook loaded) => _like = CompiledRulebook.Compile(loaded, _like);

    /// <summary>What the entries make of each other; what was found of the book checked before it and cannot have changed is taken from there.</summary>
    internal IReadOnlyList<Anomaly> Check(CompiledRulebook book)
    {
        var answers = new KnownAnswers(_answers);
        var found = RuleBaseCheck.AtOnce(book, answers);
        _answers = answers;
        return found;
    }

    internal async Task<RulebookText> Shipped(string sha256, Func<Task<RulebookText>> read) => _shipped.Find(sha256) ?? _shipped.Keep(sha256, await read());

    internal LoadedRulebook Edition(RulebookEdition edition, Func<LoadedRulebook> read)
    {
        var key = KeyOf(edition);
        return _editions.Find(key) ?? _editions.Keep(key, read());
    }

    internal void Keep(RulebookEdition edition, LoadedRulebook loaded) => _editions.Keep(KeyOf(edition), loaded);

    /// <summary>What came of trying a book; its key is all it was tried from.</summary>
    internal TriedBook Tried(string key, Func<TriedBook> trial) => _tried.Find(key) ?? _tried.Keep(key, trial());

    // The hash of a book's meaning would not do: worked cases are no part of it.
    private static string KeyOf(RulebookEdition edition) => $"{edition.ShippedSha256} {edition.Own}";
}
