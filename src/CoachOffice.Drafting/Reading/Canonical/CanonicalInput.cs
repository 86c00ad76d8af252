using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using NodaTime.Text;

namespace CoachOffice.Drafting.Reading.Canonical;

/// <summary>The one written form of a lesson's facts, and the hash that names it: the names of the lesson's own file, defaults filled in, values in the measures' units.</summary>
public static class CanonicalInput
{
    /// <summary>RFC 8785 JSON of the facts, readings sorted by measure; what was not given and has no default is left out.</summary>
    public static byte[] Write(LessonFacts facts) => Written(facts).Written.ToArray();

    /// <summary>SHA-256 of the canonical form, lower-case hexadecimal.</summary>
    public static string Sha256(LessonFacts facts) => Written(facts).Sha256();

    private static CanonicalWriter Written(LessonFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var to = new CanonicalWriter();
        to.BeginMap();
        Text(to, "asOf", LocalDatePattern.Iso.Format(facts.AsOf));
        Text(to, "club", Terms.Of(facts.Club));
        List(to, "readings", facts.Readings.OrderBy(r => r.Measure.Value, StringComparer.Ordinal), Reading);
        to.Name("student");
        Student(to, facts.Student);
        List(to, "tried", facts.Tried, Tried);
        to.EndMap();
        return to;
    }

    private static void Student(CanonicalWriter to, StudentFacts student)
    {
        to.BeginMap();
        Number(to, "birthYear", student.BirthYear);
        if (student.ClubSpeedGoal is { } goal)
        {
            to.Name("clubSpeedGoal");
            to.BeginMap();
            Text(to, "unit", goal.Unit.Symbol);
            Number(to, "value", goal.Value);
            to.EndMap();
        }

        Number(to, "daysPerWeek", student.DaysPerWeek);
        List(to, "goals", student.Goals, static (t, goal) => t.Text(Terms.Of(goal)));
        Text(to, "hand", Terms.Of(student.Hand));
        if (student.HeightCm is { } height) Number(to, "heightCm", height);
        List(to, "kit", student.Kit, static (t, kit) => t.Text(Terms.Of(kit)));
        Text(to, "level", Terms.Of(student.Level));
        List(to, "limits", student.Limits, Limit);
        Number(to, "minutesPerWeek", student.MinutesPerWeek);
        Text(to, "room", Terms.Of(student.Room));
        to.EndMap();
    }

    private static void Limit(CanonicalWriter to, BodyLimit limit)
    {
        to.BeginMap();
        Text(to, "region", Terms.Of(limit.Region));
        Text(to, "status", Terms.Of(limit.Status));
        to.EndMap();
    }

    private static void Reading(CanonicalWriter to, MeasuredValue reading)
    {
        to.BeginMap();
        if (reading.FrameRate is { } rate) Number(to, "frameRate", rate);
        Text(to, "instrument", Terms.Of(reading.Instrument));
        Text(to, "measure", reading.Measure.Value);
        Number(to, "readings", reading.Readings);
        Text(to, "unit", reading.Value.Unit.Symbol);
        Number(to, "value", reading.Value.Value);
        to.EndMap();
    }

    private static void Tried(CanonicalWriter to, TriedDrill tried)
    {
        to.BeginMap();
        Text(to, "drill", tried.Drill.Value);
        Text(to, "outcome", Terms.Of(tried.Outcome));
        Number(to, "sessions", tried.Sessions);
        to.EndMap();
    }

    private static void Text(CanonicalWriter to, string name, string value)
    {
        to.Name(name);
        to.Text(value);
    }

    private static void Number(CanonicalWriter to, string name, double value)
    {
        to.Name(name);
        to.Number(value);
    }

    private static void List<T>(CanonicalWriter to, string name, IEnumerable<T> items, Action<CanonicalWriter, T> write)
    {
        to.Name(name);
        to.BeginList();
        foreach (var item in items) write(to, item);
        to.EndList();
    }
}
