namespace CoachOffice.UseCases.FollowUps.Bounces;

/// <summary>Where notices of mail that did not arrive come in: section <c>Office:Mail:Bounces</c>. Nothing is read and no door is open unless it is set.</summary>
public sealed record BounceSettings
{
    /// <summary>A folder that holds one notice a file; what was read is moved into its folder <c>read</c>.</summary>
    public string Folder { get; init; } = "";

    /// <summary>A mailbox file (mbox) that a mail server appends to; it is only read.</summary>
    public string Mbox { get; init; } = "";

    /// <summary>The secret that signs notices posted to <c>/mail/bounces</c>; empty closes that door.</summary>
    public string Secret { get; init; } = "";
}
