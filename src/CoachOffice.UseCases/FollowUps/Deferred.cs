using System.Collections;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Lines that are made when a template asks for them: most letters name few of all they could.</summary>
internal sealed class Deferred(Func<IReadOnlyList<string>> make) : IReadOnlyList<string>
{
    private readonly Lazy<IReadOnlyList<string>> _lines = new(make);

    public int Count => _lines.Value.Count;

    public string this[int index] => _lines.Value[index];

    public IEnumerator<string> GetEnumerator() => _lines.Value.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
