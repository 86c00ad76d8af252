using Microsoft.Extensions.Caching.Memory;

namespace CoachOffice.Web.Features.Students.Charts;

/// <summary>Drawings made lately, by their tag: one that was made for one device need not be made again for the next, and a tag never names two drawings.</summary>
public sealed class KeptDrawings : IDisposable
{
    private const int MostBytes = 8 * 1024 * 1024;

    private readonly MemoryCache _drawings = new(new MemoryCacheOptions { SizeLimit = MostBytes });

    /// <inheritdoc/>
    public void Dispose() => _drawings.Dispose();

    internal byte[]? Find(string tag) => _drawings.Get<byte[]>(tag);

    internal byte[] Keep(string tag, byte[] drawing) =>
        _drawings.Set(tag, drawing, new MemoryCacheEntryOptions { Size = drawing.Length, SlidingExpiration = TimeSpan.FromMinutes(10) });
}
