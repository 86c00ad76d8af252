namespace CoachOffice.Data;

/// <summary>Where a practice's files lie: the database, its copies, mail that was not sent by SMTP.</summary>
/// <param name="Path">An absolute path.</param>
public sealed record DataFolder(string Path)
{
    /// <summary>Name of the variable (and setting) that names the folder.</summary>
    public const string Variable = "COACHOFFICE_DATA";

    /// <summary>The folder named by COACHOFFICE_DATA, else <c>data</c> at the repository's root, else <c>data</c> next to the program.</summary>
    public static DataFolder Find()
    {
        var named = Environment.GetEnvironmentVariable(Variable);
        return string.IsNullOrWhiteSpace(named) ? At(System.IO.Path.Combine(Root(), "data")) : At(named);
    }

    /// <summary>A folder, made when missing, readable by its owner only.</summary>
    public static DataFolder At(string path)
    {
        var full = System.IO.Path.GetFullPath(path);
        if (OperatingSystem.IsWindows()) Directory.CreateDirectory(full);
        else Directory.CreateDirectory(full, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        return new DataFolder(full);
    }

    /// <summary>A file or folder inside.</summary>
    public string Inside(string name) => System.IO.Path.Combine(Path, name);

    private static string Root()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(System.IO.Path.Combine(folder.FullName, "CoachOffice.sln"))) return folder.FullName;
        }

        return AppContext.BaseDirectory;
    }
}
