namespace CoachOffice.Data.Media;

/// <summary>Bytes that have arrived and lie aside; gone when disposed unless they were kept.</summary>
public sealed class ReceivedContent : IDisposable
{
    internal ReceivedContent(string path) => Path = path;

    /// <summary>Their SHA-256 in small hexadecimal digits.</summary>
    public string Sha256 { get; internal set; } = "";

    /// <summary>How many there are.</summary>
    public long Bytes { get; internal set; }

    internal string Path { get; }

    public void Dispose() => File.Delete(Path);
}
