using CoachOffice.Data;
using CoachOffice.Data.Media;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Media;

/// <summary>Removes what a crash left in the media folder: files that no row names, and arrivals that nobody ends.</summary>
public sealed class SweepMedia(OfficeDb db, MediaFolder folder, MediaFiles files)
{
    // Far longer than a file lies between its keeping and its row, and than the longest pause in an upload.
    private static readonly TimeSpan Age = TimeSpan.FromDays(1);

    /// <summary>One sweep; gives how many files went.</summary>
    public async Task<int> Once(CancellationToken stop)
    {
        var lying = folder.OlderThan(Age);
        var needed = await db.MediaItems.AsNoTracking().Select(m => new { m.Sha256, m.SmallSha256 }).ToListAsync(stop);
        var known = needed.SelectMany(m => new[] { m.Sha256, m.SmallSha256 }).ToHashSet(StringComparer.Ordinal);
        return await files.DropUnneeded(lying.Where(f => !known.Contains(f)), stop) + folder.DropArrivalsOlderThan(Age);
    }
}
