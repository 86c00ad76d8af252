namespace CoachOffice.Drafting.Checks;

/// <summary>What becomes of a rulebook with an anomaly.</summary>
public enum AnomalySeverity
{
    /// <summary>It serves, and its author is told.</summary>
    Warn,

    /// <summary>It does not serve: drafts by it would be wrong or senseless.</summary>
    Refuse,
}
