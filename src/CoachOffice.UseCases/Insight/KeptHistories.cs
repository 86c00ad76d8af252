using Microsoft.Extensions.Caching.Memory;

namespace CoachOffice.UseCases.Insight;

/// <summary>Measures read lately, by their stamp: a page of small drawings asks for the same ones dozens of times.</summary>
public sealed class KeptHistories : IDisposable
{
    private const int Most = 40;
    private static readonly MemoryCacheEntryOptions Entry = new() { Size = 1, SlidingExpiration = TimeSpan.FromMinutes(5) };

    private readonly MemoryCache _read = new(new MemoryCacheOptions { SizeLimit = Most });

    /// <inheritdoc/>
    public void Dispose() => _read.Dispose();

    internal MeasureHistories? Find(HistoryStamp stamp) => _read.Get<MeasureHistories>(stamp);

    internal MeasureHistories Keep(HistoryStamp stamp, MeasureHistories read) => _read.Set(stamp, read, Entry);
}
