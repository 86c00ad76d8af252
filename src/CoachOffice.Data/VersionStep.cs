using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.EntityFrameworkCore.Metadata;

namespace CoachOffice.Data;

/// <summary>Raises the version of every row that is saved, and of its whole when only a part changed (a reading of a lesson, a rung of a plan).</summary>
internal sealed class VersionStep : SaveChangesInterceptor
{
    public static VersionStep Instance { get; } = new();

    public override InterceptionResult<int> SavingChanges(DbContextEventData eventData, InterceptionResult<int> result)
    {
        Raise(eventData.Context!.ChangeTracker);
        return result;
    }

    public override ValueTask<InterceptionResult<int>> SavingChangesAsync(
        DbContextEventData eventData, InterceptionResult<int> result, CancellationToken cancellationToken = default)
    {
        Raise(eventData.Context!.ChangeTracker);
        return ValueTask.FromResult(result);
    }

    private static void Raise(ChangeTracker tracker)
    {
        var entries = tracker.Entries().ToList();
        var changed = entries.Where(e => e.State is EntityState.Added or EntityState.Modified or EntityState.Deleted).ToList();
        var wholes = entries.Where(HasVersion).ToDictionary(e => (e.Metadata, KeyOf(e)));
        var parts = changed.SelectMany(part => WholesOf(part, wholes));
        foreach (var entry in changed.Where(HasVersion).Concat(parts).Where(e => e.State != EntityState.Deleted).Distinct().ToList())
        {
            var version = entry.Property(TableConventions.Version);
            version.CurrentValue = entry.State == EntityState.Added ? 1 : (int)version.OriginalValue! + 1;
        }
    }

    private static IEnumerable<EntityEntry> WholesOf(EntityEntry part, Dictionary<(IEntityType, object), EntityEntry> wholes)
    {
        foreach (var link in part.Metadata.GetForeignKeys().Where(l => l.PrincipalToDependent is not null))
        {
            var key = part.Property(link.Properties[0].Name).CurrentValue;
            if (key is not null && wholes.TryGetValue((link.PrincipalEntityType, key), out var whole)) yield return whole;
        }
    }

    private static object KeyOf(EntityEntry entry) => entry.Property(entry.Metadata.FindPrimaryKey()!.Properties[0].Name).CurrentValue!;

    private static bool HasVersion(EntityEntry entry) => entry.Metadata.FindProperty(TableConventions.Version) is { IsConcurrencyToken: true };
}
