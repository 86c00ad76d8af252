using CoachOffice.Data;
using CoachOffice.Data.Bulk;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Private links minted while letters were written, until they are kept.</summary>
public sealed class MintedLinks(OfficeDb db, PrivateLinks links, IManyRows rows)
{
    private int _seen;

    /// <summary>Links minted since this was last asked.</summary>
    public IReadOnlyList<Guid> Latest()
    {
        var latest = links.Issued.Skip(_seen).Select(l => l.Id).ToList();
        _seen = links.Issued.Count;
        return latest;
    }

    /// <summary>Those minted since then are wanted no more: their letter could not be written.</summary>
    public void DropLatest()
    {
        foreach (var link in links.Issued.Skip(_seen)) db.Entry(link).State = EntityState.Detached;
        _seen = links.Issued.Count;
    }

    /// <summary>A link nobody can have received opens nothing.</summary>
    public async Task Forget(IReadOnlyList<Guid> minted, CancellationToken stop)
    {
        if (minted.Count > 0) await db.PrivateLinks.Where(l => minted.Contains(l.Id)).ExecuteDeleteAsync(stop);
    }

    /// <summary>Keeps the others in one transaction, shorter than saving tracked rows takes: the sender waits while it lasts.</summary>
    public async Task Save(CancellationToken stop)
    {
        var minted = links.Issued.Where(l => db.Entry(l).State == EntityState.Added).ToList();
        foreach (var link in minted) db.Entry(link).State = EntityState.Detached;
        if (minted.Count == 0 && !db.ChangeTracker.HasChanges()) return;
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        await rows.Add(minted, stop);
        await db.SaveChangesAsync(stop);
        await transaction.CommitAsync(stop);
    }
}
