using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using MimeKit;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Picks the door mail leaves through. From the demo practice nothing ever leaves by SMTP.</summary>
/// <param name="settings">How mail leaves.</param>
/// <param name="data">Where it lies when it leaves as files.</param>
/// <param name="time">For the rate.</param>
/// <param name="only">When registered, everything leaves through this door.</param>
public sealed class MailDoors(MailSettings settings, DataFolder data, TimeProvider time, IMailDoor? only = null) : IDisposable
{
    private readonly SmtpDoor _smtp = new(settings, time);
    private readonly MailSeal _seal = new(settings.Dkim);

    private string Folder => string.IsNullOrWhiteSpace(settings.Folder) ? data.Inside("mail") : settings.Folder;

    /// <summary>How long messages are held: far longer than a mail server may take with one.</summary>
    public BatchTimes Times { get; } = new(Duration.FromSeconds(5 * settings.TimeoutSeconds), Duration.FromSeconds(3 * settings.TimeoutSeconds));

    /// <summary>The door of a practice.</summary>
    public IMailDoor For(Practice practice)
    {
        ArgumentNullException.ThrowIfNull(practice);
        if (only is not null) return only;
        return LeavesBySmtp(practice) ? _smtp : new FolderDoor(Folder);
    }

    /// <summary>Signs what leaves by SMTP when there is a key.</summary>
    public void Seal(Practice practice, MimeMessage mail)
    {
        if (_seal.IsThere && LeavesBySmtp(practice)) _seal.Put(mail);
    }

    /// <summary>Nothing more goes for now.</summary>
    public Task Rest() => only is not null ? only.Rest() : _smtp.Rest();

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

    /// <inheritdoc/>
    public void Dispose() => _smtp.Dispose();
}
