using CoachOffice.Domain;
using CoachOffice.Domain.Media;
using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Media;

/// <summary>Refusals several operations share.</summary>
internal static class MediaRefusals
{
    public static Refusal NotFound { get; } = new("media-not-found", "There is no such still or clip; it may have been removed.");

    public static Refusal Busy { get; } = new("changed-meanwhile", "Somebody else changed or removed it at the same moment; look again and repeat it.");

    /// <summary>Why nothing of a student may be added or shown, or null when it may.</summary>
    public static Refusal? Of(MediaPermission permission, Student student) => permission switch
    {
        MediaPermission.Missing => new("media-consent-missing", $"{student.FullName} is under 18 and no guardian's consent to stills and clips is recorded. Ask {student.Guardian?.Name ?? "the guardian"} and record it on the page of consent; then add the still again."),
        MediaPermission.Withdrawn => new("media-consent-withdrawn", $"Consent to stills and clips of {student.FullName} was withdrawn, so none are added or shown. Record a new consent, or remove them."),
        _ => null,
    };
}
