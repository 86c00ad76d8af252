namespace CoachOffice.Domain.Media;

/// <summary>Whether media of a student may be added and shown today.</summary>
public enum MediaPermission
{
    Given,

    /// <summary>A minor, and nobody gave consent yet.</summary>
    Missing,

    /// <summary>The last consent was withdrawn; that holds also when a minor has come of age since, until somebody gives it anew.</summary>
    Withdrawn,
}
