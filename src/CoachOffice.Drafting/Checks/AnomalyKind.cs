namespace CoachOffice.Drafting.Checks;

/// <summary>What can be wrong with a rulebook in which every single entry reads well.</summary>
public enum AnomalyKind
{
    /// <summary>A value or a club that no range and no grade reaches.</summary>
    Gap,

    /// <summary>Two entries move the same edge at once.</summary>
    Overlap,

    /// <summary>A range whose low edge an adjustment lifts above its high one, or out of the plausible.</summary>
    InsideOut,

    /// <summary>Two patterns under the same condition with the same root.</summary>
    SaidTwice,

    /// <summary>A pattern whose condition lies inside another's and which therefore never gets its say.</summary>
    InsideAnother,

    /// <summary>What two entries demand cannot be done, or told apart, at once.</summary>
    Conflict,

    /// <summary>A condition that changes nothing: the rest says as much already.</summary>
    AlwaysTrue,

    /// <summary>A condition, or a whole pattern, that no swing can meet.</summary>
    NeverTrue,

    /// <summary>An entry no draft can ever come to.</summary>
    Unreachable,

    /// <summary>Entries that lead back to themselves.</summary>
    Circle,

    /// <summary>A pattern that fires, but in none of many students becomes a focus or explains anything.</summary>
    Masked,

    /// <summary>A drill whose success no measure can answer for.</summary>
    NoGate,

    /// <summary>A pattern without a worked case that fires, or without one that only just does not.</summary>
    NoCase,
}
