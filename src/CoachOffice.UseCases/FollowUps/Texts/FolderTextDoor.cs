namespace CoachOffice.UseCases.FollowUps.Texts;

/// <summary>Writes texts as files, one each. The same text twice is the same file.</summary>
internal sealed class FolderTextDoor(string folder) : ITextDoor
{
    public async Task<Handover> HandOver(TextMessage text, CancellationToken stop)
    {
        try
        {
            Directory.CreateDirectory(folder);
            await File.WriteAllTextAsync(Path.Combine(folder, $"{text.Id}.txt"), $"To: {text.To}\n\n{text.Text}\n", stop);
            return Handover.Taken;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new Handover(HandoverResult.TryLater, "mail-folder-closed");
        }
    }
}
