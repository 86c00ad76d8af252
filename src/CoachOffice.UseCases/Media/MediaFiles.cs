using CoachOffice.Data;
using CoachOffice.Data.Media;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Media;

/// <summary>Files of stills and clips that may have lost their last row.</summary>
public sealed class MediaFiles(OfficeDb db, MediaFolder folder)
{
    /// <summary>Removes those of these files that no row names; gives how many. Call it after the rows are gone for good.</summary>
    public async Task<int> DropUnneeded(IEnumerable<string> hashes, CancellationToken stop = default)
    {
        var dropped = 0;
        using var alone = await folder.Alone(stop);
        foreach (var hash in hashes.Where(h => h.Length > 0).Distinct(StringComparer.Ordinal))
        {
            if (await db.MediaItems.AnyAsync(m => m.Sha256 == hash || m.SmallSha256 == hash, stop) || await db.ReviewClips.AnyAsync(c => c.Sha256 == hash, stop)) continue;
            folder.Drop(hash);
            dropped++;
        }

        return dropped;
    }
}
