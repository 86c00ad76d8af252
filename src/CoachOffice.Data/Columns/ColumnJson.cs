using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace CoachOffice.Data.Columns;

/// <summary>How JSON columns are written: camel case, words for lists, ISO days, letters as they are.</summary>
internal static class ColumnJson
{
    public static JsonSerializerOptions Options { get; } = new(JsonSerializerDefaults.Web)
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        Converters = { new JsonWords(), new JsonDay(), new JsonMeasureId(), new JsonGuidIds() },
    };
}
