using System.Text.Json;
using System.Text.Json.Serialization;
using CoachOffice.Domain;

namespace CoachOffice.Data.Columns;

/// <summary>Members of closed lists as kebab words inside JSON columns.</summary>
internal sealed class JsonWords : JsonConverterFactory
{
    public override bool CanConvert(Type typeToConvert) => typeToConvert.IsEnum;

    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
        (JsonConverter)Activator.CreateInstance(typeof(Word<>).MakeGenericType(typeToConvert))!;

    private sealed class Word<T> : JsonConverter<T>
        where T : struct, Enum
    {
        public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => Terms.Parse<T>(reader.GetString()!);

        public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteStringValue(Terms.Of(value));
    }
}
