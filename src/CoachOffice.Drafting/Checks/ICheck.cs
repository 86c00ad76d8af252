namespace CoachOffice.Drafting.Checks;

/// <summary>One way of looking at a rulebook as a whole.</summary>
internal interface ICheck
{
    /// <summary>What it finds, in a fixed order.</summary>
    IEnumerable<Anomaly> Of(RuleBase rules);
}
