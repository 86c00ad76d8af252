using System.Text.Json;
using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Plans.Drafts;

/// <summary>Reads the written form of a draft. Drafts are stored and never change, so anything unexpected is a defect and throws.</summary>
internal static class DraftJsonReader
{
    public static Draft Read(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        try
        {
            using var document = JsonDocument.Parse(json);
            return Draft(document.RootElement);
        }
        catch (Exception wrong) when (wrong is JsonException or KeyNotFoundException or InvalidOperationException)
        {
            throw new FormatException("This is not the written form of a draft.", wrong);
        }
    }

    private static Draft Draft(JsonElement json) => new()
    {
        Rulebook = new DraftRulebook(Text(json.GetProperty("rulebook"), "name"), Text(json.GetProperty("rulebook"), "sha256")),
        Engine = Text(json, "engine"),
        Input = Text(json, "input"),
        Findings = All(json, "findings", Finding),
        Causes = All(json, "causes", e => new DraftCause(Text(e, "pattern"), Fault(e, "root"), Faults(e, "explains"), Text(e, "because"))),
        Focus = All(json, "focus", e => new DraftFocus(Whole(e, "order"), Fault(e, "fault"), OptionalText(e, "pattern"), Text(e, "because"), Faults(e, "after"))),
        Parked = All(json, "parked", Parked),
        Stages = All(json, "stages", Stage),
        Withheld = All(json, "withheld", e => new DraftWithheld(Text(e, "drill"), Term<WithheldReason>(e, "reason"), Text(e, "detail"))),
        MeasureNext = All(json, "measureNext", e => new DraftMeasureNext(Text(e, "measure"), Text(e, "because"))),
        Strengths = Texts(json, "strengths"),
        Cautions = All(json, "cautions", e => new DraftCaution(Text(e, "id"), Text(e, "text"))),
        Trace = All(json, "trace", e => new DraftTrace(Text(e, "rule"), Texts(e, "facts"))),
    };

    private static DraftFinding Finding(JsonElement json) => new()
    {
        Measure = Text(json, "measure"),
        Side = Term<Side>(json, "side"),
        Grade = Term<Grade>(json, "grade"),
        Value = json.GetProperty("value").GetDouble(),
        Unit = Text(json, "unit"),
        StandardError = json.GetProperty("standardError").GetDouble(),
        RangeLow = OptionalNumber(json.GetProperty("range")[0]),
        RangeHigh = OptionalNumber(json.GetProperty("range")[1]),
        OutsideBy = json.GetProperty("outsideBy").GetDouble(),
        ChanceOutside = json.GetProperty("chanceOutside").GetDouble(),
    };

    private static DraftParked Parked(JsonElement json) =>
        new(Fault(json, "fault"), Term<ParkedReason>(json, "reason"), OptionalText(json, "by") is { } by ? FaultId.Parse(by) : null);

    private static DraftStage Stage(JsonElement json) => new(Fault(json, "fault"), Term<Stage>(json, "stage"), All(json, "drills", Drill), Gate(json.GetProperty("gate")));

    private static DraftDrill Drill(JsonElement json) => new()
    {
        Drill = Text(json, "drill"),
        Name = Text(json, "name"),
        Sets = Whole(json, "sets"),
        Reps = Whole(json, "reps"),
        SessionsPerWeek = Whole(json, "sessionsPerWeek"),
        MinutesPerSession = Whole(json, "minutesPerSession"),
        Cue = Text(json, "cue"),
    };

    private static DraftGate Gate(JsonElement json) => new()
    {
        Kind = Term<GateKind>(json, "kind"),
        Measure = OptionalText(json, "measure"),
        AtLeast = OptionalNumber(json.GetProperty("atLeast")),
        AtMost = OptionalNumber(json.GetProperty("atMost")),
        Readings = Whole(json, "readings"),
        Text = Text(json, "text"),
    };

    private static List<T> All<T>(JsonElement json, string key, Func<JsonElement, T> one) => [.. json.GetProperty(key).EnumerateArray().Select(one)];

    private static List<string> Texts(JsonElement json, string key) => All(json, key, e => e.GetString() ?? throw new FormatException($"A text of '{key}' is missing."));

    private static string Text(JsonElement json, string key) => OptionalText(json, key) ?? throw new FormatException($"'{key}' is empty.");

    private static string? OptionalText(JsonElement json, string key) => json.GetProperty(key).GetString();

    private static int Whole(JsonElement json, string key) => json.GetProperty(key).GetInt32();

    private static double? OptionalNumber(JsonElement json) => json.ValueKind == JsonValueKind.Null ? null : json.GetDouble();

    private static FaultId Fault(JsonElement json, string key) => FaultId.Parse(Text(json, key));

    private static List<FaultId> Faults(JsonElement json, string key) => All(json, key, e => FaultId.Parse(e.GetString()!));

    private static T Term<T>(JsonElement json, string key)
        where T : struct, Enum => Terms.Parse<T>(Text(json, key));
}
