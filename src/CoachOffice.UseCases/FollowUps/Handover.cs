namespace CoachOffice.UseCases.FollowUps;

/// <summary>What is known after an attempt to hand a message over.</summary>
/// <param name="Result">What became of it.</param>
/// <param name="Problem">A code for the coach when it was not simply taken; never an address.</param>
public sealed record Handover(HandoverResult Result, string? Problem = null)
{
    public static Handover Taken { get; } = new(HandoverResult.Taken);

    /// <summary>True when the trouble is the server's, not this message's.</summary>
    public bool IsOfServer => Problem is { } code && (code.StartsWith("mail-server", StringComparison.Ordinal) || code.StartsWith("mail-folder", StringComparison.Ordinal));
}

/// <summary>What became of a message.</summary>
public enum HandoverResult
{
    /// <summary>The other side has it.</summary>
    Taken,

    /// <summary>It certainly did not go; trying again may help.</summary>
    TryLater,

    /// <summary>It certainly did not go and never will as it is.</summary>
    Refused,

    /// <summary>Not tried: as many as the server takes in a minute have gone.</summary>
    NotNow,

    /// <summary>It was on its way when the connection broke; nobody knows.</summary>
    Unknown,
}
