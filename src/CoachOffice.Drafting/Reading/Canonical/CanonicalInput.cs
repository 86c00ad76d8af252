using System.Text.Json.Nodes;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using NodaTime.Text;

namespace CoachOffice.Drafting.Reading.Canonical;

/// <summary>The one written form of a lesson's facts, and the hash that names it: the names of the lesson's own file, defaults filled in, values in the measures' units.</summary>
public static class CanonicalInput
{
    /// <summary>RFC 8785 JSON of the facts, readings sorted by measure; what was not given and has no default is left out.</summary>
    public static byte[] Write(LessonFacts facts) => CanonicalJson.Write(Tree(facts));

    /// <summary>SHA-256 of the canonical form, lower-case hexadecimal.</summary>
    public static string Sha256(LessonFacts facts) => CanonicalJson.Sha256(Tree(facts));

    private static JsonObject Tree(LessonFacts facts) => new()
    {
        ["asOf"] = LocalDatePattern.Iso.Format(facts.AsOf),
        ["student"] = Student(facts.Student),
        ["club"] = Terms.Of(facts.Club),
        ["readings"] = List(facts.Readings.OrderBy(r => r.Measure.Value, StringComparer.Ordinal).Select(Reading)),
        ["tried"] = List(facts.Tried.Select(Tried)),
    };

    private static JsonObject Student(StudentFacts student)
    {
        var map = new JsonObject
        {
            ["hand"] = Terms.Of(student.Hand),
            ["level"] = Terms.Of(student.Level),
            ["birthYear"] = student.BirthYear,
            ["goals"] = List(student.Goals.Select(goal => (JsonNode)Terms.Of(goal))),
            ["minutesPerWeek"] = student.MinutesPerWeek,
            ["daysPerWeek"] = student.DaysPerWeek,
            ["kit"] = List(student.Kit.Select(kit => (JsonNode)Terms.Of(kit))),
            ["room"] = Terms.Of(student.Room),
            ["limits"] = List(student.Limits.Select(Limit)),
        };
        if (student.ClubSpeedGoal is { } goal) map.Add("clubSpeedGoal", new JsonObject { ["value"] = goal.Value, ["unit"] = goal.Unit.Symbol });
        if (student.HeightCm is { } height) map.Add("heightCm", height);
        return map;
    }

    private static JsonObject Limit(Domain.Students.BodyLimit limit) => new() { ["region"] = Terms.Of(limit.Region), ["status"] = Terms.Of(limit.Status) };

    private static JsonObject Reading(MeasuredValue reading)
    {
        var map = new JsonObject
        {
            ["measure"] = reading.Measure.Value,
            ["value"] = reading.Value.Value,
            ["unit"] = reading.Value.Unit.Symbol,
            ["readings"] = reading.Readings,
            ["instrument"] = Terms.Of(reading.Instrument),
        };
        if (reading.FrameRate is { } rate) map.Add("frameRate", rate);
        return map;
    }

    private static JsonObject Tried(TriedDrill tried) =>
        new() { ["drill"] = tried.Drill.Value, ["sessions"] = tried.Sessions, ["outcome"] = Terms.Of(tried.Outcome) };

    private static JsonArray List(IEnumerable<JsonNode> items) => new([.. items]);
}
