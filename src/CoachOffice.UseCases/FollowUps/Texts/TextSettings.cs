namespace CoachOffice.UseCases.FollowUps.Texts;

/// <summary>How text messages leave: section <c>Office:Text</c>. Without an address they are written into a folder.</summary>
public sealed record TextSettings
{
    /// <summary>Where a gateway takes them, by POST of JSON; https, or this machine.</summary>
    public string Url { get; init; } = "";

    /// <summary>Signs each post: HMAC-SHA-256 of the body.</summary>
    public string Secret { get; init; } = "";

    /// <summary>Folder for texts that go through no gateway; empty means <c>texts</c> in the data folder.</summary>
    public string Folder { get; init; } = "";

    /// <summary>How long the gateway may take with one.</summary>
    public int TimeoutSeconds { get; init; } = 15;
}
