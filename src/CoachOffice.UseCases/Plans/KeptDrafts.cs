using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using Microsoft.Extensions.Caching.Memory;

namespace CoachOffice.UseCases.Plans;

/// <summary>Drafts read lately. A stored draft never changes, so it is read from its text once while a coach works on it.</summary>
public sealed class KeptDrafts : IDisposable
{
    private const int Most = 200;
    private static readonly MemoryCacheEntryOptions Entry = new() { Size = 1, SlidingExpiration = TimeSpan.FromMinutes(20) };

    private readonly MemoryCache _drafts = new(new MemoryCacheOptions { SizeLimit = Most });

    /// <inheritdoc/>
    public void Dispose() => _drafts.Dispose();

    internal Draft? Find(DraftId id) => _drafts.Get<Draft>(id);

    internal Draft Keep(DraftId id, Draft draft) => _drafts.Set(id, draft, Entry);
}
