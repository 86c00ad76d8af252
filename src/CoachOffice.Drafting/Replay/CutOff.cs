namespace CoachOffice.Drafting.Replay;

/// <summary>How far a lesson had to be followed until it was certain what an edit does to its draft.</summary>
public enum CutOff
{
    /// <summary>Neither book can draft it: it holds a measure that both lack.</summary>
    NoDraft,

    /// <summary>Graded by both books: nothing that a draft reads differs.</summary>
    SameFindings,

    /// <summary>Drafted by the book in force: what differs is neither worked on nor in the running for it.</summary>
    NotInTheWork,

    /// <summary>Drafted by both books, with the same work and cautions.</summary>
    SameWork,

    /// <summary>Drafted by both books, and they differ.</summary>
    Differs,
}
