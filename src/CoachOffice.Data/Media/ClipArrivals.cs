using System.Globalization;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;

namespace CoachOffice.Data.Media;

/// <summary>
/// Clips on their way, in the media folder's place for arrivals, whose sweep takes those that nobody goes on with for a day.
/// The file's name says all there is to know and its length how far it is, so that a restart loses nothing.
/// </summary>
public sealed class ClipArrivals(DataFolder folder)
{
    private const int Chunk = 128 * 1024;
    private const string Ending = ".clip";

    /// <summary>An empty place for it.</summary>
    public void Begin(ClipArrival arrival)
    {
        ArgumentNullException.ThrowIfNull(arrival);
        DataFolder.At(Place);
        File.Create(PathOf(arrival)).Dispose();
    }

    /// <summary>What is there of it, or null.</summary>
    public ClipArrival? Find(Guid id)
    {
        if (!Directory.Exists(Place)) return null;
        return Directory.EnumerateFiles(Place, $"{id:N}.*{Ending}").Select(Read).FirstOrDefault();
    }

    /// <summary>Writes a part behind what is there, never beyond its length; what came before the sender was cut off stays. Null while another part is being written.</summary>
    public async Task<ClipArrival?> Append(ClipArrival arrival, Stream part, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(arrival);
        ArgumentNullException.ThrowIfNull(part);
        await using var file = Alone(PathOf(arrival));
        if (file is null || file.Length != arrival.Offset) return null;
        file.Seek(0, SeekOrigin.End);
        var buffer = new byte[Chunk];
        for (int read; file.Length < arrival.Length && (read = await part.ReadAsync(buffer, stop)) > 0;)
        {
            // Once read it is written to the end, whoever hangs up meanwhile.
            await file.WriteAsync(buffer.AsMemory(0, (int)Math.Min(read, arrival.Length - file.Length)), CancellationToken.None);
            await file.FlushAsync(CancellationToken.None);
        }

        return arrival with { Offset = file.Length };
    }

    /// <summary>The bytes that are there.</summary>
    public Stream Open(ClipArrival arrival) => new FileStream(PathOf(arrival), FileMode.Open, FileAccess.Read, FileShare.Read, Chunk, FileOptions.Asynchronous | FileOptions.SequentialScan);

    /// <summary>It goes no further.</summary>
    public void Drop(ClipArrival arrival) => File.Delete(PathOf(arrival));

    private string Place => Path.Combine(folder.Inside("media"), ".arriving");

    private string PathOf(ClipArrival a)
    {
        ArgumentNullException.ThrowIfNull(a);
        return Path.Combine(Place, string.Create(CultureInfo.InvariantCulture, $"{a.Id:N}.{a.By.Value:N}.{a.Lesson.Value:N}.{a.Length}{Ending}"));
    }

    private static ClipArrival Read(string path)
    {
        var parts = Path.GetFileName(path).Split('.');
        return new ClipArrival(Guid.Parse(parts[0]), AccountId.From(Guid.Parse(parts[1])), LessonId.From(Guid.Parse(parts[2])), long.Parse(parts[3], CultureInfo.InvariantCulture), new FileInfo(path).Length);
    }

    private static FileStream? Alone(string path)
    {
        try
        {
            return new FileStream(path, FileMode.Open, FileAccess.Write, FileShare.None, Chunk, FileOptions.Asynchronous);
        }
        catch (IOException)
        {
            return null;
        }
    }
}
