using CoachOffice.Domain.Access;
using Microsoft.AspNetCore.Identity;
using NodaTime;

namespace CoachOffice.Data.Access;

/// <summary>A person who signs in. Never deleted, only disabled: histories name them.</summary>
public sealed class Account : IdentityUser<Guid>
{
    /// <summary>As shown in histories and on plans.</summary>
    public string DisplayName { get; set; } = "";

    /// <summary>What they may do.</summary>
    public Policy Policy { get; set; }

    /// <summary>When the account was made.</summary>
    public Instant AddedAt { get; set; }

    /// <summary>Set when they may no longer sign in.</summary>
    public Instant? DisabledAt { get; set; }

    /// <summary>IANA zone they want times shown in; null means the practice's.</summary>
    public string? Zone { get; set; }

    /// <summary>They want a mail each morning that has something for them.</summary>
    public bool WantsMorningList { get; set; }

    /// <summary>The account's identity in the domain's own type.</summary>
    public AccountId AccountId => AccountId.From(Id);

    /// <summary>This person as the one who acts.</summary>
    public Actor AsActor() => new(AccountId, DisplayName, Policy);
}
