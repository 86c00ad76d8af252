using System.CommandLine;
using CoachOffice.Data.Safekeeping;
using CoachOffice.Domain.Safekeeping;
using CoachOffice.UseCases.Safekeeping;

namespace CoachOffice.Cli;

/// <summary><c>backup</c>, <c>restore FOLDER</c> and <c>try-backup FOLDER</c>: the whole practice out of harm's way, and back.</summary>
internal static class KeepSafe
{
    public static Command Backup(Report report)
    {
        var data = Data();
        var to = new Option<string?>("--to") { Description = "The folder backups lie in; that of the office's settings when left out.", HelpName = "DIR" };
        var keep = new Option<int?>("--keep") { Description = "How many backups are kept there.", HelpName = "N" };
        var command = new Command("backup", "Makes a backup while the office is at work, and tries it out.") { to, keep, data };
        command.SetAction(async (parsed, stop) =>
        {
            var office = new OfficeAtHand(parsed.GetValue(data), Over(parsed.GetValue(to), parsed.GetValue(keep)));
            var made = await office.Do<MakeBackup, SafetyCopy>(make => make.Now(OfficeAtHand.Shell, stop));
            if (!made.TryGet(out var copy)) return report.Refuse(made.Refusals);
            if (copy.State == SafetyCopyState.Failed)
            {
                report.Error(copy.Problem!);
                return ExitCode.Refused;
            }

            report.Write($"{copy.Place}: {copy.Rows} rows, {copy.Files} stills and clips, {copy.Bytes} bytes; brought back aside and found the same\n");
            if (copy.Absent > 0) report.Error($"warning: {copy.Absent} stills or clips the practice names were not in its folder.");
            return ExitCode.Done;
        });
        return command;
    }

    public static Command Restore(Report report)
    {
        var (backup, data) = (Folder(), Data());
        var command = new Command("restore", "Brings a backup back into an empty place: the data folder and database its settings name.") { backup, data };
        command.SetAction(async (parsed, stop) =>
        {
            var office = new OfficeAtHand(parsed.GetValue(data));
            var restored = await new RestoreBackup(parsed.GetValue(backup)!, TimeProvider.System).Into(office.Database, office.Folder, stop);
            return restored.TryGet(out var manifest) ? Told(report, manifest, $"brought back into {office.Folder.Path}") : report.Refuse(restored.Refusals);
        });
        return command;
    }

    public static Command Try(Report report)
    {
        var backup = Folder();
        var command = new Command("try-backup", "Brings a backup back aside, compares it, and removes it again.") { backup };
        command.SetAction(async (parsed, stop) =>
        {
            var tried = await new RestoreBackup(parsed.GetValue(backup)!, TimeProvider.System).Prove(stop);
            return tried.TryGet(out var manifest) ? Told(report, manifest, "brought back aside and found the same") : report.Refuse(tried.Refusals);
        });
        return command;
    }

    private static int Told(Report report, BackupManifest manifest, string what)
    {
        foreach (var table in manifest.Tables.Where(t => t.Rows > 0).OrderBy(t => t.Table, StringComparer.Ordinal)) report.Write($"{table.Table,-26} {table.Rows,9} rows  {table.Sum[..16]}\n");
        report.Write($"backup of {manifest.MadeAt:yyyy-MM-dd HH:mm:ss}Z: {manifest.Rows} rows, {manifest.Media.Count} stills and clips; {what}\n");
        return ExitCode.Done;
    }

    private static Argument<string> Folder() => new("FOLDER") { Description = "The backup's own folder, beside the folder media of its stills and clips." };

    private static Option<string?> Data() => new("--data") { Description = "The office's data folder; where the office itself looks for it when left out.", HelpName = "DIR" };

    private static Dictionary<string, string?> Over(string? to, int? keep)
    {
        var over = new Dictionary<string, string?>(StringComparer.Ordinal);
        if (to is not null) over["Office:Backup:Folder"] = Path.GetFullPath(to);
        if (keep is not null) over["Office:Backup:Keep"] = $"{keep}";
        return over;
    }
}
