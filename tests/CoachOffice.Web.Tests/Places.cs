namespace CoachOffice.Web.Tests;

/// <summary>Where things lie in the repository.</summary>
internal static class Places
{
    public static string Repository { get; } = Up(AppContext.BaseDirectory);

    public static string WebRoot { get; } = Path.Combine(Repository, "src", "CoachOffice.Web", "wwwroot");

    private static string Up(string folder) =>
        File.Exists(Path.Combine(folder, "CoachOffice.sln")) ? folder : Up(Path.GetDirectoryName(folder) ?? throw new DirectoryNotFoundException("No CoachOffice.sln above the tests."));
}
