using NodaTime;

namespace CoachOffice.Domain.Access;

/// <summary>The practice itself: one row, made at first run.</summary>
public sealed class Practice
{
    private Practice()
    {
    }

    public Guid Id { get; private set; }

    public string Name { get; private set; } = "";

    /// <summary>IANA zone id; times are shown in it.</summary>
    public string Zone { get; private set; } = "";

    /// <summary>ISO 4217 code.</summary>
    public string Currency { get; private set; } = "";

    /// <summary>How lengths and speeds are shown; storage is metric.</summary>
    public UnitSystem Units { get; private set; }

    /// <summary>Local emergency number shown on safety pages, e.g. 112.</summary>
    public string EmergencyNumber { get; private set; } = "";

    /// <summary>True when everyone needs a second factor.</summary>
    public bool RequiresSecondFactor { get; private set; }

    /// <summary>Sender name and address of mail that goes out.</summary>
    public string MailFrom { get; private set; } = "";

    /// <summary>Address of the pages as students reach them, without a trailing slash.</summary>
    public string PublicAddress { get; private set; } = "";

    /// <summary>True in the demo practice: nothing is ever sent by SMTP from it.</summary>
    public bool IsDemo { get; private set; }

    public Instant OpenedAt { get; private set; }

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    /// <summary>A new practice.</summary>
    public static Practice Open(Guid id, PracticeDetails details, bool isDemo, Instant now)
    {
        var practice = new Practice { Id = id, IsDemo = isDemo, OpenedAt = now };
        practice.Change(details);
        return practice;
    }

    /// <summary>Takes over what a person entered; checked before by <see cref="PracticeDetails.Check"/>.</summary>
    public void Change(PracticeDetails details)
    {
        ArgumentNullException.ThrowIfNull(details);
        Name = details.Name.Trim();
        Zone = details.Zone;
        Currency = details.Currency;
        Units = details.Units;
        EmergencyNumber = details.EmergencyNumber.Trim();
        RequiresSecondFactor = details.RequiresSecondFactor;
        MailFrom = details.MailFrom.Trim();
        PublicAddress = details.PublicAddress.TrimEnd('/');
    }
}
