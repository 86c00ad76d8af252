using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Microsoft.EntityFrameworkCore.Storage;

namespace CoachOffice.Data.Bulk;

/// <summary>A table as the mappings have it: its name, its columns, and how a row's values are read and converted.</summary>
internal sealed class RowColumns
{
    private readonly IProperty[] _properties;
    private readonly Func<object?, object?>?[] _converters;

    private RowColumns(IEntityType type)
    {
        _properties = [.. type.GetProperties()];
        _converters = [.. _properties.Select(p => p.GetTypeMapping().Converter?.ConvertToProvider)];
        Table = Quoted(type.GetTableName()!);
        Names = [.. _properties.Select(p => Quoted(p.GetColumnName()))];
        Types = [.. _properties.Select(p => ((RelationalTypeMapping)p.GetTypeMapping()).StoreTypeNameBase)];
    }

    /// <summary>The table, in quotes.</summary>
    public string Table { get; }

    /// <summary>The columns, in quotes.</summary>
    public IReadOnlyList<string> Names { get; }

    /// <summary>Their types in the database, without lengths.</summary>
    public IReadOnlyList<string> Types { get; }

    public static RowColumns Of<T>(OfficeDb db) => new(db.Model.FindEntityType(typeof(T)) ?? throw new InvalidOperationException($"{typeof(T).Name} has no table."));

    /// <summary>A row's value as the database keeps it; null when there is none.</summary>
    public object? Value(object row, int column)
    {
        var property = _properties[column];

        // What saving would do by itself: a new row begins at version 1.
        if (property.Name == TableConventions.Version && property.IsConcurrencyToken) return 1;
        var value = property.GetGetter().GetClrValue(row);
        return value is null || _converters[column] is not { } convert ? value : convert(value);
    }

    private static string Quoted(string name) => $"\"{name}\"";
}
