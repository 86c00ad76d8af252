using CoachOffice.Data;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Metadata;

namespace CoachOffice.UseCases.Tests.Database;

/// <summary>No database is opened: both models are made from code.</summary>
public sealed class CompiledModelTests
{
    [Theory]
    [InlineData(DatabaseProvider.Sqlite, "Data Source=none.db")]
    [InlineData(DatabaseProvider.PostgreSql, "Host=localhost;Database=none")]
    public async Task The_compiled_model_says_what_the_mappings_say(DatabaseProvider provider, string connection)
    {
        await using var db = new OfficeDb(new OfficeDatabase(provider, connection).Options());

        var mapped = Lines(db.GetService<IDesignTimeModel>().Model);
        var compiled = Lines(db.Model);

        Assert.IsAssignableFrom<RuntimeModel>(db.Model);
        Assert.True(mapped.SequenceEqual(compiled), $"The compiled model is stale, make it again as DEVELOPERS.md says:\n{string.Join('\n', mapped.Except(compiled).Union(compiled.Except(mapped)).Take(10))}");
    }

    private static List<string> Lines(IModel model) => [.. model.GetEntityTypes().SelectMany(Lines).Order(StringComparer.Ordinal)];

    private static IEnumerable<string> Lines(IEntityType table)
    {
        const MetadataDebugStringOptions Shape = MetadataDebugStringOptions.LongDefault & ~MetadataDebugStringOptions.IncludeAnnotations;
        yield return $"{table.GetTableName()} {table.ToDebugString(Shape)}";
        foreach (var property in table.GetFlattenedProperties())
        {
            var mapping = property.GetRelationalTypeMapping();
            yield return $"{table.GetTableName()}.{property.GetColumnName()}: {property.ClrType} as {mapping.StoreType}, {mapping.Converter?.ProviderClrType}, set unless {Sentinel(property)}, saves {property.GetBeforeSaveBehavior()}, {property.GetAfterSaveBehavior()}";
        }

        foreach (var index in table.GetIndexes()) yield return $"{table.GetTableName()} {index.GetDatabaseName()} {index.IsUnique}";
        foreach (var link in table.GetForeignKeys()) yield return $"{table.GetTableName()} {link.GetConstraintName()} {link.DeleteBehavior}";
    }

    // An id that was never set refuses to be compared or written; that both are such is enough.
    private static string Sentinel(IProperty property) =>
        property.Sentinel is null ? "null" : property.ClrType.Namespace!.StartsWith("CoachOffice", StringComparison.Ordinal) && !property.ClrType.IsEnum ? property.ClrType.Name : $"{property.Sentinel}";
}
