namespace CoachOffice.Drafting.Replay;

/// <summary>Why no reading can tell beforehand which lessons a change reaches.</summary>
public enum WholeReason
{
    /// <summary>Amounts of practice concern every lesson with something to work on.</summary>
    Dosage,

    /// <summary>Cautions depend on student, place and work, not on a reading.</summary>
    Cautions,

    /// <summary>A draft may name a measure nobody read.</summary>
    MeasureNames,

    /// <summary>The order of the measures breaks ties anywhere.</summary>
    MeasureOrder,
}
