using System.Security.Cryptography;
using System.Text;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.FollowUps;

/// <summary>A mail server told that a message of ours did not arrive (RFC 3464). The address is kept as a hash alone: it is only ever compared.</summary>
public sealed class MailBounce
{
    private MailBounce()
    {
    }

    public Guid Id { get; private set; }

    /// <summary>The message that came back.</summary>
    public Guid MessageId { get; private set; }

    /// <summary>Whom that message was about, or null.</summary>
    public StudentId? StudentId { get; private set; }

    /// <summary>SHA-256 of the address in lower case, as hex.</summary>
    public string AddressSha256 { get; private set; } = "";

    /// <summary>For good (5.x.x): nothing goes to this address until it is corrected or a person says it is right. Otherwise (4.x.x) it only counts.</summary>
    public bool IsHard { get; private set; }

    /// <summary>The status code of RFC 3463, such as 5.1.1.</summary>
    public string Status { get; private set; } = "";

    /// <summary>The same notice twice gives the same key. Unique.</summary>
    public string OnceKey { get; private set; } = "";

    public Instant ReceivedAt { get; private set; }

    /// <summary>A notice about a message of ours.</summary>
    public static MailBounce Of(Guid id, Message message, string address, string status, Instant now)
    {
        ArgumentNullException.ThrowIfNull(message);
        ArgumentNullException.ThrowIfNull(status);
        var hash = HashOf(address);
        return new MailBounce
        {
            Id = id,
            MessageId = message.Id,
            StudentId = message.StudentId,
            AddressSha256 = hash,
            IsHard = status.StartsWith("5.", StringComparison.Ordinal),
            Status = status,
            OnceKey = $"{message.Id:N}|{hash}|{status}",
            ReceivedAt = now,
        };
    }

    /// <summary>How an address is compared.</summary>
    public static string HashOf(string address)
    {
        ArgumentNullException.ThrowIfNull(address);
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(address.Trim().ToLowerInvariant())));
    }
}
