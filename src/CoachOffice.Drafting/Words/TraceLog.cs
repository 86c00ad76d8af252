using CoachOffice.Domain.Plans.Drafts;

namespace CoachOffice.Drafting.Words;

/// <summary>The reasoning, step by step, in the order it happened.</summary>
internal sealed class TraceLog
{
    private readonly List<DraftTrace> _steps = [];

    /// <summary>The steps so far.</summary>
    public IReadOnlyList<DraftTrace> Steps => _steps;

    /// <summary>Adds one step; one without facts says nothing and is left out.</summary>
    public void Add(string rule, params IReadOnlyList<string> facts)
    {
        if (facts.Count > 0) _steps.Add(new DraftTrace(rule, facts));
    }
}
