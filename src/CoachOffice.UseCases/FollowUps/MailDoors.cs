using CoachOffice.Data;
using CoachOffice.Domain.Access;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Picks the door mail leaves through. From the demo practice nothing ever leaves by SMTP.</summary>
public sealed class MailDoors(MailSettings settings, DataFolder data)
{
    /// <summary>The door of a practice.</summary>
    public IMailDoor For(Practice practice)
    {
        ArgumentNullException.ThrowIfNull(practice);
        return LeavesBySmtp(practice) ? new SmtpDoor(settings) : new FolderDoor(string.IsNullOrWhiteSpace(settings.Folder) ? data.Inside("mail") : settings.Folder);
    }

    /// <summary>True when mail really goes to people.</summary>
    public bool LeavesBySmtp(Practice practice)
    {
        ArgumentNullException.ThrowIfNull(practice);
        return !string.IsNullOrWhiteSpace(settings.Host) && !practice.IsDemo;
    }
}
