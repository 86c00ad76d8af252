using System.Text.Json;
using System.Text.Json.Serialization;
using CoachOffice.Domain.Measuring;

namespace CoachOffice.Data.Columns;

/// <summary>Ids of measures as their text inside JSON columns.</summary>
internal sealed class JsonMeasureId : JsonConverter<MeasureId>
{
    public override MeasureId Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => MeasureId.From(reader.GetString()!);

    public override void Write(Utf8JsonWriter writer, MeasureId value, JsonSerializerOptions options) => writer.WriteStringValue(value.Value);
}
