using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using Vogen;

namespace CoachOffice.Data.Columns;

/// <summary>A typed id is stored as the value it wraps.</summary>
internal sealed class Ids<TId, TValue>() : ValueConverter<TId, TValue>(id => ValueOf(id), value => From(value))
    where TId : struct, IVogen<TId, TValue>
{
    // An expression may not call a static abstract member, a method may.
    private static TId From(TValue value) => TId.From(value);

    private static TValue ValueOf(TId id) => id.Value;
}
