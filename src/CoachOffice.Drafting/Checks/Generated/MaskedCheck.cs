using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting.Checks.Algebra;
using CoachOffice.Drafting.Checks.Conditions;
using CoachOffice.Drafting.Checks.Examples;

namespace CoachOffice.Drafting.Checks.Generated;

/// <summary>Patterns that fire but have no say in any of many generated students: never a focus, and nothing of theirs explained. Algebra cannot see that, as it comes of the ordering.</summary>
internal sealed class MaskedCheck(PatternsAtWork work) : ICheck
{
    /// <summary>How many students are drafted at most; fewer when every pattern has had its say before.</summary>
    public const int Students = 5000;

    /// <summary>So many boxes for each club are variety enough.</summary>
    private const int MostBoxes = 40;

    private const int Seed = 20260504;

    public IEnumerable<Anomaly> Of(RuleBase rules)
    {
        var silent = rules.Book.Patterns.ToDictionary(p => p.Id, p => work.Of(p).SelectMany(r => r.Pieces().Take(MostBoxes)).ToList()).Where(p => p.Value.Count > 0).ToDictionary();
        var fired = new Dictionary<PatternId, LessonFacts>();
        var drafted = Draft(rules, silent, fired);
        foreach (var id in silent.Keys.OrderBy(id => id.Value, StringComparer.Ordinal))
        {
            var pattern = rules.Book.Find(id)!;
            if (fired.TryGetValue(id, out var lesson))
                yield return work.Found(AnomalyKind.Masked, AnomalySeverity.Warn, $"fired, but in none of {drafted} students did it become a focus or explain anything: others always claim its root or come before it; give it a smaller precedence, an 'over', or take it out", work.Examples.Among([lesson], draft => IsSilent(draft, pattern)), pattern);
            else yield return work.Found(AnomalyKind.NeverTrue, AnomalySeverity.Warn, $"fired in none of {drafted} students; look for conditions that exclude each other by a derived measure", null, pattern);
        }
    }

    /// <summary>Drafts students for the patterns in turn until each was heard; tells how many.</summary>
    private static int Draft(RuleBase rules, Dictionary<PatternId, List<Box>> silent, Dictionary<PatternId, LessonFacts> fired)
    {
        var lessons = new GeneratedLessons(rules, new Random(Seed));
        var turn = silent.Keys.OrderBy(id => id.Value, StringComparer.Ordinal).ToList();
        var drafted = 0;
        while (drafted < Students && silent.Count > 0)
        {
            foreach (var id in turn)
            {
                if (!silent.TryGetValue(id, out var boxes)) continue;
                if (++drafted > Students) break;
                var lesson = lessons.In(boxes);
                var draft = rules.Draft(lesson);
                foreach (var heard in silent.Keys.Where(other => HasItsSay(draft, other)).ToList()) silent.Remove(heard);
                foreach (var mute in silent.Keys.Where(other => draft.Trace.Any(t => t.Rule == $"pattern:{other.Value}"))) fired.TryAdd(mute, lesson);
            }
        }

        return Math.Min(drafted, Students);
    }

    private static bool IsSilent(Draft draft, Pattern pattern) => ExampleOf.Fires(pattern)(draft) && !HasItsSay(draft, pattern.Id);

    private static bool HasItsSay(Draft draft, PatternId id) =>
        draft.Focus.Any(f => f.Pattern == id.Value) || draft.Causes.Any(c => c.Pattern == id.Value && c.Explains.Count > 0);
}
