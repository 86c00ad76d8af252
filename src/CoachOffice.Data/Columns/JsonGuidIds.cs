using System.Text.Json;
using System.Text.Json.Serialization;
using Vogen;

namespace CoachOffice.Data.Columns;

/// <summary>Typed ids that wrap a Guid as its text inside JSON columns.</summary>
internal sealed class JsonGuidIds : JsonConverterFactory
{
    // Asked by the interface's definition: naming it closed over any other type is a fault of its own.
    public override bool CanConvert(Type typeToConvert) =>
        typeToConvert.IsValueType && Array.Exists(typeToConvert.GetInterfaces(), i => i.IsGenericType && i.GetGenericTypeDefinition() == typeof(IVogen<,>) && i.GetGenericArguments()[1] == typeof(Guid));

    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
        (JsonConverter)Activator.CreateInstance(typeof(Of<>).MakeGenericType(typeToConvert))!;

    private sealed class Of<TId> : JsonConverter<TId>
        where TId : struct, IVogen<TId, Guid>
    {
        public override TId Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => TId.From(reader.GetGuid());

        public override void Write(Utf8JsonWriter writer, TId value, JsonSerializerOptions options) => writer.WriteStringValue(value.Value);
    }
}
