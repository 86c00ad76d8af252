using System.Security.Cryptography;
using System.Text;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Patterns;
using CoachOffice.Drafting.Replay;

namespace CoachOffice.Drafting.Checks.Algebra;

/// <summary>
/// All that the answer to "where does this pattern fire" rests on, in words: its clubs and conditions, those of the patterns it names under `unless`, and of every measure they speak of
/// its definition, its ranges and adjustments, and the bounds and counts that any pattern of the book sets it, by which the readings are chosen that stand for all (<see cref="CellSamples"/>).
/// Two books with the same words have the same readings to choose from, graded the same, hence the same answer, into whatever cells they put them.
/// </summary>
internal sealed class Grounds(Rulebook book)
{
    private readonly Dictionary<MeasureId, string> _measures = [];
    private readonly Lazy<ILookup<MeasureId, Condition>> _samples = new(() => Leaves.Of(book).Where(c => c is ValueCondition or ReadingsCondition).ToLookup(Leaves.MeasureOf));
    private readonly Lazy<ILookup<MeasureId, WantedRange>> _ranges = new(() => book.Ranges.ToLookup(r => r.Measure));

    /// <summary>Of a pattern, also one that is not quite the book's.</summary>
    public string Of(Pattern pattern)
    {
        var conditions = pattern.When.Concat(pattern.Needs.Select(m => new StateCondition(m, MeasureState.InRange))).Concat(pattern.Unless);
        var measures = conditions.SelectMany(Named).Distinct().OrderBy(m => m.Value, StringComparer.Ordinal).Select(Of);
        return $"[{string.Join(',', pattern.Clubs)}|{Texts(pattern.When)}|{string.Join(',', pattern.Needs.Select(m => m.Value))}|{Texts(pattern.Unless)}|{string.Join(' ', pattern.Unless.SelectMany(PatternDepths.Named).Select(Of))}|{string.Join(' ', measures)}]";
    }

    /// <summary>Of the cells of a measure, as a hash.</summary>
    public string Of(MeasureId measure)
    {
        if (!_measures.TryGetValue(measure, out var known)) _measures.Add(measure, known = Hash(measure));
        return known;
    }

    private string Of(PatternId id) => book.Find(id) is { } pattern ? Of(pattern) : "none";

    private string Hash(MeasureId measure) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join(
        '\n',
        DefinitionText.Of(book.Find(measure)!),
        DefinitionText.OfAll(_ranges.Value[measure], nameof(WantedRange.Card), nameof(WantedRange.Aim), nameof(WantedRange.Source)),
        DefinitionText.OfAll(book.Adjustments.Where(a => a.Measure == measure), nameof(RangeAdjustment.Source)),
        Texts(_samples.Value[measure])))));

    private static string Texts(IEnumerable<Condition> conditions) => string.Join(';', conditions.Select(ConditionText.Of));

    private static IEnumerable<MeasureId> Named(Condition condition) => condition switch
    {
        AnyOfCondition any => any.Any.SelectMany(Named),
        SameSideCondition same => same.Measures,
        _ => Leaves.IsLeaf(condition) ? [Leaves.MeasureOf(condition)] : [],
    };
}
