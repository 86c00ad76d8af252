using CoachOffice.Data;
using CoachOffice.Data.Safekeeping;

namespace CoachOffice.UseCases.Safekeeping;

/// <summary>Where this office's backups stand.</summary>
public sealed class BackupPlace(BackupSettings settings, DataFolder folder, TimeProvider time)
{
    private const string Usual = "backups";

    public BackupSettings Settings => settings;

    /// <summary>The folder they lie in.</summary>
    public string Folder => settings.Folder.Length > 0 ? Path.GetFullPath(settings.Folder, folder.Path) : folder.Inside(Usual);

    /// <summary>True while they lie on the same disk as what they protect, as far as the setting tells.</summary>
    public bool IsBeside => Folder.StartsWith(folder.Path, StringComparison.Ordinal);

    /// <summary>The shelf there; dispose it.</summary>
    public BackupShelf Shelf() => new(Folder, time);

    /// <summary>A backup as it is restored.</summary>
    internal RestoreBackup Restore(string backup) => new(backup, time);
}
