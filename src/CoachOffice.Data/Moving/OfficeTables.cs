using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace CoachOffice.Data.Moving;

/// <summary>Every table of the office as the mappings have it, those that others point to first. A new table comes along by itself.</summary>
internal static class OfficeTables
{
    public static IReadOnlyList<MovedTable> Of(OfficeDb db)
    {
        var left = db.Model.GetRelationalModel().Tables.OrderBy(t => t.Name, StringComparer.Ordinal).ToList();
        var placed = new List<ITable>();
        while (left.Count > 0)
        {
            var next = left.FirstOrDefault(t => Above(t).All(placed.Contains)) ?? throw new InvalidOperationException($"These tables point at each other in a circle: {string.Join(", ", left.Select(t => t.Name))}.");
            placed.Add(next);
            left.Remove(next);
        }

        return [.. placed.Select(Read)];
    }

    private static IEnumerable<ITable> Above(ITable table) => table.ForeignKeyConstraints.Select(k => k.PrincipalTable).Where(t => t != table);

    private static MovedTable Read(ITable table) => new(table.Name, [.. table.Columns.OrderBy(c => c.Name, StringComparer.Ordinal).Select(Read)], Counted(table));

    private static MovedColumn Read(IColumn column)
    {
        var mapping = column.StoreTypeMapping;

        // What several properties share as one document has no property of its own.
        var isJson = column.PropertyMappings.Count == 0;
        var kind = isJson ? typeof(string) : mapping.Converter?.ProviderClrType ?? mapping.ClrType;
        return new MovedColumn(column.Name, Nullable.GetUnderlyingType(kind) ?? kind, mapping.StoreTypeNameBase, isJson);
    }

    private static string? Counted(ITable table) =>
        table.PrimaryKey is { Columns: [var only] } && only.PropertyMappings is [{ Property: { ValueGenerated: ValueGenerated.OnAdd } key }, ..] && key.ClrType == typeof(int) ? only.Name : null;
}
