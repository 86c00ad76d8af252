using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using Vogen;

namespace CoachOffice.Data.Columns;

/// <summary>A typed id is stored as the value it wraps. What an id cannot wrap, the empty value, is an id that was never set; using it fails.</summary>
internal sealed class Ids<TId, TValue>() : ValueConverter<TId, TValue>(id => ValueOf(id), value => From(value))
    where TId : struct, IVogen<TId, TValue>
{
    private static readonly TValue Empty = typeof(TValue) == typeof(string) ? (TValue)(object)string.Empty : default!;

    // An expression may not call a static abstract member, a method may. The compiled model tells by the empty value which id counts as not set.
    private static TId From(TValue value) => EqualityComparer<TValue>.Default.Equals(value, Empty) ? default : TId.From(value);

    // The tool that writes the compiled model asks for the value of an id that was never set, and writes no rows.
    private static TValue ValueOf(TId id) => EF.IsDesignTime ? Empty : id.Value;
}
