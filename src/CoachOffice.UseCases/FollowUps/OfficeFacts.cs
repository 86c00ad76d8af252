using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>What decides about a claimed message of any family without a plan, read after the claim.</summary>
public sealed record OfficeFacts
{
    public required Message Message { get; init; }

    /// <summary>Whom it is about, or null.</summary>
    public required Student? Student { get; init; }

    public required Practice Practice { get; init; }

    /// <summary>Where messages of its purpose are stopped; null where they cannot be.</summary>
    public Uri? StopLink { get; init; }

    /// <summary>Addresses from which mail came back for good, as hashes.</summary>
    public IReadOnlySet<string> Bounced { get; init; } = new HashSet<string>();

    public required Instant Now { get; init; }

    public required FollowUpDates Dates { get; init; }

    /// <summary>The practice's own words for it, or the coach's for this one; null: the shipped ones.</summary>
    public LetterWords? Words { get; init; }

    /// <summary>The practice's day.</summary>
    public LocalDate Today => Dates.DayOf(Now);

    /// <summary>True when the student is under 18 today.</summary>
    public bool IsMinor => Student?.BirthDate is { } born && Ages.IsMinor(born, Today);

    /// <summary>The guardian of a minor, else the student; null without an address.</summary>
    public MailRecipient? StudentsMail => Student?.RecipientOn(Today);
}
