namespace CoachOffice.Domain.Plans;

/// <summary>What opens the next stage.</summary>
public enum GateKind
{
    Count,
    Measure,
    Outcome,
    Coach,
}
