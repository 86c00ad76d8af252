using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Picks the door mail leaves through. From the demo practice nothing ever leaves by SMTP.</summary>
/// <param name="settings">How mail leaves.</param>
/// <param name="data">Where it lies when it leaves as files.</param>
/// <param name="only">When registered, everything leaves through this door.</param>
public sealed class MailDoors(MailSettings settings, DataFolder data, IMailDoor? only = null)
{
    private string Folder => string.IsNullOrWhiteSpace(settings.Folder) ? data.Inside("mail") : settings.Folder;

    /// <summary>The door of a practice.</summary>
    public IMailDoor For(Practice practice)
    {
        ArgumentNullException.ThrowIfNull(practice);
        if (only is not null) return only;
        return LeavesBySmtp(practice) ? new SmtpDoor(settings) : new FolderDoor(Folder);
    }

    /// <summary>Where a message lies when it was written as a file: the place to delete it from when its student is erased.</summary>
    public string FileOf(Message message)
    {
        ArgumentNullException.ThrowIfNull(message);
        return Path.Combine(Folder, $"{message.StableName}.eml");
    }

    /// <summary>True when mail really goes to people.</summary>
    public bool LeavesBySmtp(Practice practice)
    {
        ArgumentNullException.ThrowIfNull(practice);
        return only is null && !string.IsNullOrWhiteSpace(settings.Host) && !practice.IsDemo;
    }
}
