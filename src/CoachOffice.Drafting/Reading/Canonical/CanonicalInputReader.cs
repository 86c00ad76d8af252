using System.Text.Json;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using NodaTime.Text;

namespace CoachOffice.Drafting.Reading.Canonical;

/// <summary>Reads the canonical form of a lesson's facts back as it was written, without asking any rulebook: a measure of an older book keeps its id and its unit.</summary>
public static class CanonicalInputReader
{
    /// <summary>The facts; throws <see cref="FormatException"/>, <see cref="JsonException"/> or <see cref="KeyNotFoundException"/> for anything <see cref="CanonicalInput"/> did not write.</summary>
    public static LessonFacts Read(string json)
    {
        using var document = JsonDocument.Parse(json);
        var root = document.RootElement;
        return new LessonFacts
        {
            AsOf = LocalDatePattern.Iso.Parse(Text(root, "asOf")).GetValueOrThrow(),
            Student = Student(root.GetProperty("student")),
            Club = Word<Club>(root, "club"),
            Readings = [.. root.GetProperty("readings").EnumerateArray().Select(Reading)],
            Tried = [.. root.GetProperty("tried").EnumerateArray().Select(Tried)],
        };
    }

    private static StudentFacts Student(JsonElement student) => new()
    {
        Hand = Word<Hand>(student, "hand"),
        Level = Word<Level>(student, "level"),
        BirthYear = Whole(student, "birthYear"),
        Goals = Words<Goal>(student, "goals"),
        MinutesPerWeek = Whole(student, "minutesPerWeek"),
        DaysPerWeek = Whole(student, "daysPerWeek"),
        Kit = Words<Kit>(student, "kit"),
        Room = Word<Room>(student, "room"),
        Limits = [.. student.GetProperty("limits").EnumerateArray().Select(l => new BodyLimit(Word<Region>(l, "region"), Word<LimitStatus>(l, "status")))],
        ClubSpeedGoal = student.TryGetProperty("clubSpeedGoal", out var goal) ? Quantity(goal) : null,
        HeightCm = NumberIf(student, "heightCm"),
    };

    private static MeasuredValue Reading(JsonElement reading) => new()
    {
        Measure = MeasureId.From(Text(reading, "measure")),
        Value = Quantity(reading),
        Readings = Whole(reading, "readings"),
        Instrument = Word<Instrument>(reading, "instrument"),
        FrameRate = NumberIf(reading, "frameRate"),
    };

    private static TriedDrill Tried(JsonElement tried) => new(DrillId.From(Text(tried, "drill")), Whole(tried, "sessions"), Word<TriedOutcome>(tried, "outcome"));

    private static Quantity Quantity(JsonElement entry)
    {
        var unit = Text(entry, "unit");
        return new Quantity(entry.GetProperty("value").GetDouble(), Unit.Find(unit) ?? throw new FormatException($"'{unit}' is no unit."));
    }

    private static T[] Words<T>(JsonElement entry, string name)
        where T : struct, Enum => [.. entry.GetProperty(name).EnumerateArray().Select(word => Terms.Parse<T>(word.GetString()!))];

    private static T Word<T>(JsonElement entry, string name)
        where T : struct, Enum => Terms.Parse<T>(Text(entry, name));

    private static string Text(JsonElement entry, string name) => entry.GetProperty(name).GetString()!;

    private static int Whole(JsonElement entry, string name) => entry.GetProperty(name).GetInt32();

    private static double? NumberIf(JsonElement entry, string name) => entry.TryGetProperty(name, out var number) ? number.GetDouble() : null;
}
