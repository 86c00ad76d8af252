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

    /// <summary>How long one message may take altogether; leases are made from it.</summary>
    public int TimeoutSeconds { get; init; } = 30;

    /// <summary>As many messages in any minute as the server takes from this office; 0 means no limit.</summary>
    public int PerMinute { get; init; }

    /// <summary>Where the server reports what it could not deliver (the envelope's sender, RFC 5321); empty means the practice's own address.</summary>
    public string ReturnPath { get; init; } = "";

    /// <summary>Signing of what leaves by SMTP.</summary>
    public DkimSettings Dkim { get; init; } = new();
}

/// <summary>How mail is signed (RFC 6376): section <c>Office:Mail:Dkim</c>. Nothing is signed without a key.</summary>
public sealed record DkimSettings
{
    /// <summary>The domain that vouches for the mail.</summary>
    public string Domain { get; init; } = "";

    /// <summary>The public key's name below <c>_domainkey</c> of that domain.</summary>
    public string Selector { get; init; } = "";

    /// <summary>File with the private key, as PEM.</summary>
    public string KeyFile { get; init; } = "";
}
