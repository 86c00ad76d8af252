namespace CoachOffice.Benchmarks.Measuring;

/// <summary>Where the checkout is.</summary>
internal static class Checkout
{
    /// <summary>The folder of CoachOffice.sln.</summary>
    public static string Root { get; } = Find();

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "CoachOffice.sln"))) folder = folder.Parent;
        return folder?.FullName ?? throw new DirectoryNotFoundException("Benchmarks run inside the checkout.");
    }
}
