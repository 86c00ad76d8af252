namespace CoachOffice.UseCases.FollowUps;

/// <summary>How mail leaves: section <c>Office:Mail</c>. Without a host it is written into a folder.</summary>
public sealed record MailSettings
{
    /// <summary>Folder for mail that is not sent by SMTP; empty means <c>mail</c> in the data folder.</summary>
    public string Folder { get; init; } = "";

    /// <summary>SMTP server; empty means the folder.</summary>
    public string Host { get; init; } = "";

    public int Port { get; init; } = 587;

    /// <summary>True when the connection may stay unencrypted, e.g. to a server on the same machine.</summary>
    public bool AllowPlain { get; init; }

    public string User { get; init; } = "";

    public string Password { get; init; } = "";

    /// <summary>How long one message may take altogether; well under the lease.</summary>
    public int TimeoutSeconds { get; init; } = 30;
}
