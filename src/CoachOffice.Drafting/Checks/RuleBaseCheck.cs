using CoachOffice.Drafting.Checks.Conditions;
using CoachOffice.Drafting.Checks.Generated;
using CoachOffice.Drafting.Checks.Ranges;
using CoachOffice.Drafting.Checks.Reach;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.Drafting.Checks;

/// <summary>Looks at a rulebook as a whole, once every entry of it was read without a fault: what the entries make of each other. No clock, no chance: the same book gives the same anomalies in the same order, those that refuse it first.</summary>
public static class RuleBaseCheck
{
    /// <summary>All anomalies, also those that only many generated students show (up to a few seconds, when some pattern is never heard).</summary>
    public static IReadOnlyList<Anomaly> Of(LoadedRulebook loaded)
    {
        var work = Start(loaded);
        return Run(work, [.. Reasoned(work), new MaskedCheck(work)]);
    }

    /// <summary>The anomalies that follow by reasoning alone, fast enough to be asked while somebody types.</summary>
    public static IReadOnlyList<Anomaly> AtOnce(LoadedRulebook loaded)
    {
        var work = Start(loaded);
        return Run(work, Reasoned(work));
    }

    /// <summary>The same of a book that is compiled already.</summary>
    /// <param name="compiled">The book.</param>
    /// <param name="answers">Takes what is worked out, and gives what was worked out for a book before and still stands.</param>
    public static IReadOnlyList<Anomaly> AtOnce(CompiledRulebook compiled, KnownAnswers? answers = null)
    {
        ArgumentNullException.ThrowIfNull(compiled);
        var work = new PatternsAtWork(new RuleBase(compiled.Loaded, compiled), answers);
        return Run(work, Reasoned(work));
    }

    /// <summary>Only what many generated students show, to be told beside <see cref="AtOnce"/>.</summary>
    public static IReadOnlyList<Anomaly> Unheard(CompiledRulebook compiled)
    {
        ArgumentNullException.ThrowIfNull(compiled);
        var work = new PatternsAtWork(new RuleBase(compiled.Loaded, compiled));
        return Run(work, [new MaskedCheck(work)]);
    }

    private static PatternsAtWork Start(LoadedRulebook loaded)
    {
        ArgumentNullException.ThrowIfNull(loaded);
        return new PatternsAtWork(new RuleBase(loaded));
    }

    private static List<ICheck> Reasoned(PatternsAtWork work) =>
    [
        new RangeGapCheck(),
        new AdjustmentCheck(),
        new NeverTrueCheck(work),
        new AlwaysTrueCheck(work),
        new TwicePatternsCheck(work),
        new OppositeDrillsCheck(work),
        new CircleCheck(work),
        new LadderReachCheck(work.Examples),
        new CautionReachCheck(),
        new GateCheck(),
        new CaseCheck(work),
    ];

    private static IReadOnlyList<Anomaly> Run(PatternsAtWork work, List<ICheck> checks) =>
        [.. checks.SelectMany(check => check.Of(work.Rules)).OrderByDescending(a => a.Severity)];
}
