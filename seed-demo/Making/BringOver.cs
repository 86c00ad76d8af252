using System.Reflection;
using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using Microsoft.AspNetCore.DataProtection.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace CoachOffice.SeedDemo.Making;

/// <summary>Carries rows from one office database to another, row by row as they are; either may be of either kind.</summary>
internal sealed class BringOver(OfficeDb from, OfficeDb to)
{
    // Keys belong to their own machine; links of letters nobody received open nothing.
    private static readonly Type[] StayBehind = [typeof(DataProtectionKey), typeof(PrivateLink)];
    private static readonly Type[] Book = [typeof(ShippedBook), typeof(KeptRulebook), typeof(RulebookEdition), typeof(BookInForce)];
    private static readonly MethodInfo OfType = typeof(BringOver).GetMethod(nameof(Rows), BindingFlags.Instance | BindingFlags.NonPublic)!;

    /// <summary>The rulebook in force and those kept; false when there is none yet.</summary>
    public async Task<bool> Rulebook(CancellationToken stop)
    {
        if (!await from.BooksInForce.AnyAsync(stop)) return false;
        foreach (var type in Book) await Copy(type, stop);
        return true;
    }

    /// <summary>The whole practice in one transaction; false when another was opened meanwhile, and then nothing is changed.</summary>
    public async Task<bool> Practice(CancellationToken stop)
    {
        to.ChangeTracker.AutoDetectChangesEnabled = false;
        await using var transaction = await to.Database.BeginTransactionAsync(stop);
        to.Practices.AddRange(await from.Practices.AsNoTracking().ToListAsync(stop));
        if (await to.TrySave(stop) != Saved.Yes) return false;
        var book = await to.BooksInForce.AnyAsync(stop);
        foreach (var type in InOrder().Where(t => t != typeof(Practice) && !StayBehind.Contains(t) && !(book && Book.Contains(t)))) await Copy(type, stop);
        await transaction.CommitAsync(stop);
        return true;
    }

    private Task Copy(Type type, CancellationToken stop) => (Task)OfType.MakeGenericMethod(type).Invoke(this, [stop])!;

    private async Task Rows<T>(CancellationToken stop)
        where T : class
    {
        to.ChangeTracker.Clear();
        to.Set<T>().AddRange(await from.Set<T>().AsNoTracking().ToListAsync(stop));
        await to.SaveChangesAsync(stop);
        to.ChangeTracker.Clear();
    }

    // What a row points at comes before it.
    private List<Type> InOrder()
    {
        var left = to.Model.GetEntityTypes().Where(t => !t.IsOwned() && !t.HasSharedClrType && t.GetTableName() is not null).OrderBy(t => t.Name, StringComparer.Ordinal).ToList();
        var done = new List<IEntityType>();
        while (left.Count > 0)
        {
            var next = left.First(t => t.GetForeignKeys().All(k => k.PrincipalEntityType == t || done.Contains(k.PrincipalEntityType)));
            done.Add(next);
            left.Remove(next);
        }

        return [.. done.Select(t => t.ClrType)];
    }
}
