using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Reading.Nodes;
using NodaTime;

namespace CoachOffice.Drafting.Reading.Lessons;

/// <summary>Reads the student of a lesson.</summary>
internal sealed class StudentEntry(Rulebook book, LocalDate asOf)
{
    private const int LongestWeek = 7 * 12 * 60;
    private const int OldestAge = 110;
    private const int YoungestAge = 2;

    private static readonly StudentFacts Nobody = new()
    {
        Hand = Hand.Right,
        Level = Level.Beginner,
        BirthYear = 1900,
        MinutesPerWeek = 1,
        DaysPerWeek = 1,
        Room = Room.Home,
    };

    public StudentFacts Read(Entry lesson)
    {
        if (lesson.Require("student") is not { } node || Entry.Of(node, lesson.Faults) is not { } entry) return Nobody;
        var student = new StudentFacts
        {
            Hand = entry.Word<Hand>("hand"),
            Level = entry.Word<Level>("level"),
            BirthYear = BirthYear(entry),
            Goals = entry.WordsIf<Goal>("goals"),
            MinutesPerWeek = entry.Whole("minutesPerWeek", 1, LongestWeek),
            DaysPerWeek = entry.Whole("daysPerWeek", 1, 7),
            Kit = entry.WordsIf<Kit>("kit"),
            Room = entry.Word<Room>("room"),
            Limits = Limits(entry),
            ClubSpeedGoal = SpeedGoal(entry),
            HeightCm = Height(entry),
        };
        entry.Close();
        return student;
    }

    private int BirthYear(Entry entry)
    {
        var before = entry.Faults.Count;
        var year = entry.Whole("birthYear", 0, 9999);
        if (entry.Faults.Count > before || asOf == LocalDate.MaxIsoValue) return year;
        var node = entry.Find("birthYear")!;
        if (year > asOf.Year) entry.Faults.Add(node, $"the student is born after the lesson of {asOf.Year}; write the year of birth");
        else if (asOf.Year - year - 1 < YoungestAge) entry.Faults.Add(node, $"born in {year} the student would be younger than {YoungestAge}; write the year of birth");
        else if (year < asOf.Year - OldestAge) entry.Faults.Add(node, $"{year} is more than {OldestAge} years before the lesson; write the year of birth");
        return year;
    }

    private static List<BodyLimit> Limits(Entry entry)
    {
        var found = new List<BodyLimit>();
        foreach (var item in entry.ItemsIf("limits"))
        {
            if (Entry.Of(item, entry.Faults) is not { } limit) continue;
            var one = new BodyLimit(limit.Word<Region>("region"), limit.Word<LimitStatus>("status"));
            limit.Close();
            if (!limit.Sound) continue;
            if (found.Exists(l => l.Region == one.Region)) entry.Faults.Add(limit.Find("region")!, "this region stands in the list already; write what holds today, once");
            else found.Add(one);
        }

        return found;
    }

    private Quantity? SpeedGoal(Entry entry)
    {
        if (entry.Find("clubSpeedGoal") is not { } node || Entry.Of(node, entry.Faults) is not { } goal) return null;
        var measure = book.Find(MeasureId.From("club-speed"));
        var value = ValueEntry.Read(goal, measure?.Unit ?? Unit.MetrePerSecond, measure);
        goal.Close();
        return goal.Sound ? value : null;
    }

    private static double? Height(Entry entry)
    {
        var before = entry.Faults.Count;
        if (entry.NumberIf("heightCm") is not { } height || entry.Faults.Count > before) return null;
        if (height is < 80 or > 230) entry.Faults.Add(entry.Find("heightCm")!, $"{Single.Show(height)} is no stature from 80 to 230 cm");
        return height;
    }
}
