namespace CoachOffice.FaultProof;

/// <summary>How the mail server behaves.</summary>
public enum ServerMode
{
    /// <summary>Takes mail: written to its log and flushed to the disk before it answers.</summary>
    Normal,

    /// <summary>Takes mail and keeps nothing of it, for measuring.</summary>
    Forget,

    /// <summary>Reads the message and never answers.</summary>
    Hang,

    /// <summary>Answers 451.</summary>
    Later,

    /// <summary>Answers 554.</summary>
    Never,

    /// <summary>Reads the message, keeps nothing and cuts the connection.</summary>
    DropAfterData,

    /// <summary>Takes the message and cuts the connection instead of answering.</summary>
    DropReply,
}
