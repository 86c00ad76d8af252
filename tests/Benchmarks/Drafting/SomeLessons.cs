using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Benchmarks.Drafting;

/// <summary>Lessons nobody gave, the same at every run: any club, any student, 6 to 40 readings in and around the wanted ranges.</summary>
internal sealed class SomeLessons(Rulebook book, Random chance)
{
    private const int Fewest = 6;
    private const int Most = 40;

    public IReadOnlyList<LessonFacts> Take(int count) => [.. Enumerable.Range(0, count).Select(_ => One())];

    private LessonFacts One()
    {
        var club = OneOf<Club>();
        var measures = book.Measures.ToArray();
        chance.Shuffle(measures);
        return new LessonFacts
        {
            AsOf = new LocalDate(2026, 5, 4),
            Student = Student(),
            Club = club,
            Readings = [.. measures.Take(chance.Next(Fewest, Most + 1)).Select(m => Reading(m, club))],
            Tried = [.. Enumerable.Range(0, chance.Next(3)).Select(_ => Tried()).DistinctBy(t => t.Drill)],
        };
    }

    private StudentFacts Student() => new()
    {
        Hand = OneOf<Hand>(),
        Level = OneOf<Level>(),
        BirthYear = chance.Next(1945, 2016),
        Goals = Some<Goal>(chance.Next(1, 4)),
        MinutesPerWeek = chance.Next(20, 241),
        DaysPerWeek = chance.Next(1, 8),
        Kit = Some<Kit>(chance.Next(2, 12)),
        Room = OneOf<Room>(),
        Limits = chance.Next(3) > 0 ? [] : [new BodyLimit(OneOf<Region>(), OneOf<LimitStatus>())],
        HeightCm = chance.Next(2) == 0 ? null : chance.Next(150, 200),
    };

    private MeasuredValue Reading(Measure measure, Club club)
    {
        var range = book.RangeOf(measure.Id, club)?.Limits ?? new Limits(null, null);
        var middle = ((range.Low ?? range.High ?? 40) + (range.High ?? range.Low ?? 40)) / 2;
        var half = ((range.High ?? middle) - (range.Low ?? middle)) / 2;
        var steps = chance.Next(2) == 0 ? 0 : (chance.NextDouble() * 8) - 4;
        return new MeasuredValue
        {
            Measure = measure.Id,
            Value = new Quantity(Math.Round(middle + (Math.Sign(steps) * half) + (steps * (measure.Step ?? 1)), 2), measure.Unit),
            Readings = chance.Next(1, 8),
            Instrument = measure.Instruments[0],
            FrameRate = measure.Instruments[0] == Instrument.Video ? 240 : null,
        };
    }

    private TriedDrill Tried() => new(book.Drills[chance.Next(book.Drills.Count)].Id, chance.Next(1, 10), OneOf<TriedOutcome>());

    private T OneOf<T>()
        where T : struct, Enum => Enum.GetValues<T>()[chance.Next(Enum.GetValues<T>().Length)];

    private T[] Some<T>(int count)
        where T : struct, Enum
    {
        var all = Enum.GetValues<T>();
        chance.Shuffle(all);
        return [.. all.Take(count)];
    }
}
