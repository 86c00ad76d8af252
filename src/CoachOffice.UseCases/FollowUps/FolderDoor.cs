using MimeKit;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Writes mail as files, one per message, so that a fresh machine shows the whole loop. The same message twice is the same file.</summary>
internal sealed class FolderDoor(string folder) : IMailDoor
{
    public async Task<Handover> HandOver(MimeMessage mail, CancellationToken cancellationToken)
    {
        try
        {
            Directory.CreateDirectory(folder);
            var name = NameOf(mail);
            var half = Path.Combine(folder, $".{name}.part");
            await mail.WriteToAsync(half, CancellationToken.None);
            File.Move(half, Path.Combine(folder, name), overwrite: true);
            return Handover.Taken;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // A full or closed folder is the same as a mail server that is down: nothing is lost, it is tried again.
            return new Handover(HandoverResult.TryLater, "mail-folder-closed");
        }
    }

    private static string NameOf(MimeMessage mail)
    {
        var left = (mail.MessageId ?? "mail").Split('@')[0];
        return $"{new string([.. left.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '.' ? c : '_')])}.eml";
    }
}
