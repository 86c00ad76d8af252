using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Patterns;

/// <summary>A pattern held against a lesson: whether it holds, on what, and what was missing.</summary>
public sealed record PatternMatch
{
    /// <summary>The pattern.</summary>
    public required Pattern Pattern { get; init; }

    /// <summary>Every `when` holds with one finding at least moderate, every `needs` is read and in range, no `unless` holds.</summary>
    public required bool Holds { get; init; }

    /// <summary>The findings out of range that speak for it, by row.</summary>
    public required IReadOnlyList<Finding> Matched { get; init; }

    /// <summary>Measures that `when` and `needs` would still have to hear from.</summary>
    public required IReadOnlyList<MeasureId> Missing { get; init; }

    /// <summary>Measures under `unless` that nobody read: they passed, and one more reading could rule the pattern out.</summary>
    public required IReadOnlyList<MeasureId> Passed { get; init; }

    /// <summary>What stands against it, as written in the rulebook; empty when only readings are missing.</summary>
    public IReadOnlyList<string> Against => [.. Objections.Select(o => o.Text)];

    /// <summary>The same before it is put into words, which few matches ever are.</summary>
    internal IReadOnlyList<Objection> Objections { get; init; } = [];

    /// <summary>Not fired, yet something speaks for it and nothing against: only readings are missing.</summary>
    public bool IsUndecided => !Holds && Matched.Count > 0 && Missing.Count > 0 && Objections.Count == 0;

    /// <summary>Undecided, and a fault it would explain waits for the missing readings.</summary>
    public bool HoldsUp => IsUndecided && Pattern.Unread != UnreadReadings.Suggest && HasWeight;

    /// <summary>Not fired, something speaks for it, and no more than one thing stands in the way.</summary>
    public bool IsNearMiss => !Holds && HasWeight && (IsUndecided || (Objections.Count == 1 && Missing.Count == 0));

    private bool HasWeight
    {
        get
        {
            foreach (var finding in Matched) if (finding.Weight >= 2) return true;
            return false;
        }
    }
}
