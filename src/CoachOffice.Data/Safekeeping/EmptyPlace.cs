using CoachOffice.Domain;
using Microsoft.Data.Sqlite;

namespace CoachOffice.Data.Safekeeping;

/// <summary>Where a backup may be brought back: nothing is ever mixed or written over.</summary>
internal static class EmptyPlace
{
    private const string MediaName = "media";

    /// <summary>The file of an SQLite office; null for a server, whose tables are counted when they are written.</summary>
    public static string? FileOf(OfficeDatabase database) =>
        database.Provider == DatabaseProvider.Sqlite ? Path.GetFullPath(new SqliteConnectionStringBuilder(database.ConnectionString).DataSource) : null;

    public static Refusal? Occupied(OfficeDatabase database, DataFolder folder)
    {
        if (FileOf(database) is { } file && File.Exists(file)) return Not($"{file} is there already");
        var media = folder.Inside(MediaName);
        return Directory.Exists(media) && Directory.EnumerateFiles(media, "*", SearchOption.AllDirectories).Any() ? Not($"stills or clips lie in {media} already") : null;
    }

    /// <summary>Takes back what was copied before something failed.</summary>
    public static void EmptyMedia(DataFolder folder)
    {
        if (Directory.Exists(folder.Inside(MediaName))) Directory.Delete(folder.Inside(MediaName), recursive: true);
    }

    private static Refusal Not(string why) => new("restore-not-empty", $"A backup is only brought back into an empty place, and {why}. Name an empty folder, or put away what is there.");
}
