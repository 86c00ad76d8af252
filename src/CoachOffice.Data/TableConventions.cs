using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Metadata;

namespace CoachOffice.Data;

/// <summary>What holds for every table of the office: ids are made by us, nothing is deleted along with something else, rows with a version refuse a lost update.</summary>
internal static class TableConventions
{
    /// <summary>Name of the concurrency token on everything a person edits.</summary>
    public const string Version = "Version";

    public static void Apply(ModelBuilder builder, DatabaseFacade database)
    {
        var ours = builder.Model.GetEntityTypes().Where(t => t.ClrType.Assembly == typeof(Student).Assembly).ToList();
        foreach (var table in ours) Settle(table);

        // Byte order, as SQLite has by itself: lists read the same on both databases.
        if (database.IsNpgsql()) builder.Entity<Student>().Property(s => s.SearchText).UseCollation("C");
    }

    private static void Settle(IMutableEntityType table)
    {
        foreach (var key in table.FindPrimaryKey()?.Properties ?? []) key.ValueGenerated = ValueGenerated.Never;
        foreach (var link in table.GetForeignKeys()) link.DeleteBehavior = DeleteBehavior.Restrict;
        if (table.FindProperty(Version) is { } version) version.IsConcurrencyToken = true;
    }
}
