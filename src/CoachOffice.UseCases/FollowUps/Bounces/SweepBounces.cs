using Microsoft.Extensions.Logging;
using MimeKit;

namespace CoachOffice.UseCases.FollowUps.Bounces;

/// <summary>Reads notices of mail that did not arrive from a folder and from a mailbox file. Whatever lies there, the clock goes on.</summary>
public sealed partial class SweepBounces(BounceSettings settings, KeepBounce keep, BounceMarks marks, ILogger<SweepBounces> log)
{
    private const int MostFiles = 200;
    private const long LargestFile = 10 * 1024 * 1024;
    private const long LargestMbox = 256L * 1024 * 1024;

    /// <summary>How many told something new.</summary>
    public async Task<int> Once(CancellationToken stop)
    {
        try
        {
            return await FromFolder(stop) + await FromMbox(stop);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            LogClosed(log, failure.Message);
            return 0;
        }
    }

    private async Task<int> FromFolder(CancellationToken stop)
    {
        if (settings.Folder.Length == 0 || !Directory.Exists(settings.Folder)) return 0;
        var read = Directory.CreateDirectory(Path.Combine(settings.Folder, "read")).FullName;
        var count = 0;
        foreach (var file in Directory.EnumerateFiles(settings.Folder).Where(f => !Path.GetFileName(f).StartsWith('.')).Order(StringComparer.Ordinal).Take(MostFiles).ToList())
        {
            if (new FileInfo(file).Length <= LargestFile) count += await One(() => MimeMessage.LoadAsync(file, stop), stop) ?? 0;
            File.Move(file, Path.Combine(read, Path.GetFileName(file)), overwrite: true);
        }

        return count;
    }

    // The mail server owns the file: it is read from where it was read to. One that became shorter was begun anew.
    private async Task<int> FromMbox(CancellationToken stop)
    {
        if (settings.Mbox.Length == 0 || !File.Exists(settings.Mbox)) return 0;
        await using var stream = new FileStream(settings.Mbox, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var from = marks.ReadUpTo(settings.Mbox, stream.Length);
        if (from == stream.Length || stream.Length - from > LargestMbox) return 0;
        stream.Position = from;
        var parser = new MimeParser(stream, MimeFormat.Mbox, persistent: false);
        var count = 0;
        while (!parser.IsEndOfStream && !stop.IsCancellationRequested)
        {
            if (await One(() => parser.ParseMessageAsync(stop), stop) is not { } kept) break;
            count += kept;
        }

        marks.Note(settings.Mbox, stream.Length);
        return count;
    }

    // A file that is no mail is passed over.
    private async Task<int?> One(Func<Task<MimeMessage>> load, CancellationToken stop)
    {
        MimeMessage mail;
        try
        {
            mail = await load();
        }
        catch (Exception failure) when (failure is FormatException or ParseException)
        {
            LogUnread(log);
            return null;
        }

        using (mail)
        {
            var count = 0;
            foreach (var notice in BounceReader.Read(mail)) count += await keep.Of(notice, stop) ? 1 : 0;
            return count;
        }
    }

    [LoggerMessage(Level = LogLevel.Warning, Message = "A file among the notices of undelivered mail is no mail and was passed over.")]
    private static partial void LogUnread(ILogger log);

    [LoggerMessage(Level = LogLevel.Warning, Message = "Notices of undelivered mail could not be read: {Why}")]
    private static partial void LogClosed(ILogger log, string why);
}
