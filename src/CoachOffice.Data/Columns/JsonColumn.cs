using System.Text.Json;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace CoachOffice.Data.Columns;

/// <summary>A small immutable record or list is stored as JSON text in one column.</summary>
internal static class JsonColumn
{
    public static PropertyBuilder<T> AsJson<T>(this PropertyBuilder<T> property) =>
        property.HasConversion(new ToText<T>(), new ByText<T>());

    internal static string Write<T>(T value) => JsonSerializer.Serialize(value, ColumnJson.Options);

    internal static T Read<T>(string text) => JsonSerializer.Deserialize<T>(text, ColumnJson.Options)!;

    internal static bool Same<T>(T? one, T? other) => ReferenceEquals(one, other) || string.Equals(Write(one), Write(other), StringComparison.Ordinal);

    internal static int Hash<T>(T value) => Write(value).GetHashCode(StringComparison.Ordinal);

    internal sealed class ToText<T>() : ValueConverter<T, string>(value => Write(value), text => Read<T>(text));

    internal sealed class ByText<T>() : ValueComparer<T>((one, other) => Same(one, other), value => Hash(value), value => value);
}
