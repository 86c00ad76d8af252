namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>Words and ids of one kind of thing. Where two have the same words the id is added to the second's.</summary>
internal sealed class PickList
{
    private readonly Dictionary<string, string> _wordsById = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _idByWords = new(StringComparer.OrdinalIgnoreCase);

    public PickList(IEnumerable<(string Id, string Words)> things)
    {
        foreach (var (id, words) in things.DistinctBy(t => t.Id))
        {
            var own = _idByWords.ContainsKey(words) ? $"{words} ({id})" : words;
            _wordsById[id] = own;
            _idByWords[own] = id;
        }
    }

    public IReadOnlyList<string> Words => [.. _wordsById.Values];

    public string IdOf(string words) => _idByWords.GetValueOrDefault(words.Trim()) ?? words.Trim();

    public string WordsOf(string id) => _wordsById.GetValueOrDefault(id) ?? id;
}
