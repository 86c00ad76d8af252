using System.Globalization;
using CoachOffice.Domain;
using CoachOffice.Domain.Students;

namespace CoachOffice.Web.Features.FollowUps;

/// <summary>How messages reach a student, as typed.</summary>
public sealed class ContactFields
{
    private const string Texts = "text";

    /// <summary>"mail" or "text".</summary>
    public string? By { get; set; }

    public string? From { get; set; }

    public string? Until { get; set; }

    public string? Zone { get; set; }

    public bool ByText => By == Texts;

    public static ContactFields Of(ContactWishes wishes) => new()
    {
        By = wishes.AppointmentsByText ? Texts : "mail",
        From = wishes.QuietFrom?.ToString(CultureInfo.InvariantCulture),
        Until = wishes.QuietUntil?.ToString(CultureInfo.InvariantCulture),
        Zone = wishes.Zone,
    };

    /// <summary>The wishes, or what is wrong with them.</summary>
    public Outcome<ContactWishes> Read()
    {
        if (!TryHour(From, out var from) || !TryHour(Until, out var until)) return new Refusal("contact-hour", "Hours go from 0 to 23.", nameof(From));
        return new ContactWishes { AppointmentsByText = ByText, QuietFrom = from, QuietUntil = until, Zone = Zone ?? "" };
    }

    private static bool TryHour(string? typed, out int? hour)
    {
        hour = null;
        if (string.IsNullOrWhiteSpace(typed)) return true;
        if (!int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var number)) return false;
        hour = number;
        return true;
    }
}
