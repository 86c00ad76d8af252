namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>An entry's form as typed: texts by name. A name that stands for a list has several, in the order of its rows.</summary>
internal sealed class EntryForm
{
    private readonly Dictionary<string, List<string>> _values = new(StringComparer.Ordinal);

    public static EntryForm From(IFormCollection posted)
    {
        var form = new EntryForm();
        foreach (var (name, values) in posted) form.Put(name, [.. values.Select(v => v ?? "")]);
        return form;
    }

    /// <summary>The only or first text of a name; empty when there is none.</summary>
    public string One(string name) => _values.TryGetValue(name, out var values) && values.Count > 0 ? values[0].Trim() : "";

    public IReadOnlyList<string> Many(string name) => _values.GetValueOrDefault(name) ?? [];

    public bool Has(string name, string value) => Many(name).Contains(value);

    public void Put(string name, IEnumerable<string> values) => _values[name] = [.. values];

    public void Put(string name, string value) => Put(name, [value]);

    public void Add(string name, string value)
    {
        if (!_values.TryGetValue(name, out var values)) _values[name] = values = [];
        values.Add(value);
    }
}
