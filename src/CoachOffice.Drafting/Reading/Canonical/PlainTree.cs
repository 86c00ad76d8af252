using System.Collections;
using System.Collections.Concurrent;
using System.Reflection;
using System.Text.Json.Nodes;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.Drafting.Reading.Canonical;

/// <summary>Turns a record of the model into a plain tree by walking all its properties, so that a property added later cannot be forgotten in a hash. Nulls are left out.</summary>
internal static class PlainTree
{
    private static readonly ConcurrentDictionary<Type, IReadOnlyList<PropertyInfo>> Known = new();

    public static JsonNode? Of(object? value) => value switch
    {
        null => null,
        string text => text,
        bool flag => flag,
        int number => number,
        double number => number,
        Enum member => Terms.Of(member),
        Unit unit => unit.Symbol,
        FaultId fault => fault.ToString(),
        MeasureId id => id.Value,
        PatternId id => id.Value,
        DrillId id => id.Value,
        ProgressionId id => id.Value,
        CautionId id => id.Value,
        LocalDate date => LocalDatePattern.Iso.Format(date),
        IEnumerable list => new JsonArray([.. list.Cast<object?>().Select(Of)]),
        _ => Record(value),
    };

    private static JsonObject Record(object value)
    {
        var map = new JsonObject();
        if (value is Condition) map.Add("kind", value.GetType().Name);
        foreach (var property in Properties(value.GetType()))
        {
            if (Of(property.GetValue(value)) is { } node) map.Add(property.Name, node);
        }

        return map;
    }

    // What can be set is meaning; what is only computed follows from it.
    private static IReadOnlyList<PropertyInfo> Properties(Type type) => Known.GetOrAdd(type, static t =>
        [.. t.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.CanWrite && p.GetIndexParameters().Length == 0)]);
}
