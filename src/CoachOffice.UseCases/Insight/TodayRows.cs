using System.Collections;

namespace CoachOffice.UseCases.Insight;

/// <summary>A list of the day, perhaps shortened.</summary>
/// <param name="found">One more than is shown, where there are more.</param>
/// <param name="most">So many are shown.</param>
public sealed class TodayRows<TRow>(IReadOnlyList<TRow> found, int most) : IReadOnlyList<TRow>
{
    /// <summary>There are more, and the whole list shows them.</summary>
    public bool HasMore => found.Count > most && most < TodayPage.Most;

    /// <inheritdoc/>
    public int Count => Math.Min(found.Count, most);

    /// <inheritdoc/>
    public TRow this[int index] => found[index];

    /// <inheritdoc/>
    public IEnumerator<TRow> GetEnumerator() => found.Take(most).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
