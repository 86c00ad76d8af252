namespace CoachOffice.Data.Sqlite;

/// <summary>A lock on a file that the operating system lets go of even when the program is killed.</summary>
internal sealed class FileHold : IAsyncDisposable
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(200);

    private readonly FileStream _file;

    private FileHold(FileStream file) => _file = file;

    /// <summary>Waits its turn.</summary>
    public static async Task<IAsyncDisposable> Take(string path, CancellationToken stop)
    {
        while (true)
        {
            if (Open(path) is { } file) return new FileHold(file);
            await Task.Delay(Pause, stop);
        }
    }

    /// <summary>At once, or null while somebody else has it.</summary>
    public static IAsyncDisposable? Try(string path) => Open(path) is { } file ? new FileHold(file) : null;

    public ValueTask DisposeAsync() => _file.DisposeAsync();

    private static FileStream? Open(string path)
    {
        try
        {
            return new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException) when (File.Exists(path))
        {
            return null;
        }
    }
}
