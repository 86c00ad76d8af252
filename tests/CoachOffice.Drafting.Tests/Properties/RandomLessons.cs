using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Reading;
using CsCheck;
using NodaTime;

namespace CoachOffice.Drafting.Tests.Properties;

/// <summary>Lessons nobody gave: any club, any student, up to two dozen readings in and around the wanted ranges.</summary>
internal static class RandomLessons
{
    private static readonly Gen<StudentFacts> Students =
        from who in Gen.Select(Gen.OneOf(Enum.GetValues<Hand>()), Gen.OneOf(Enum.GetValues<Level>()), Gen.Int[1945, 2018])
        from goals in Gen.Shuffle(Enum.GetValues<Goal>(), 0, 3)
        from week in Gen.Select(Gen.Int[0, 240], Gen.Int[1, 7])
        from place in Gen.Select(Gen.Shuffle(Enum.GetValues<Kit>(), 0, 15), Gen.OneOf(Enum.GetValues<Room>()))
        from limits in Gen.Frequency((2, Gen.Const(Array.Empty<BodyLimit>())), (1, Limits))
        from body in Gen.Select(Gen.Bool, Gen.Double[120, 205], Gen.Bool, Gen.Int[25, 60])
        select new StudentFacts
        {
            Hand = who.Item1,
            Level = who.Item2,
            BirthYear = who.Item3,
            Goals = goals,
            MinutesPerWeek = week.Item1,
            DaysPerWeek = week.Item2,
            Kit = place.Item1,
            Room = place.Item2,
            Limits = limits,
            HeightCm = body.Item1 ? Math.Round(body.Item2) : null,
            ClubSpeedGoal = body.Item3 ? new Quantity(body.Item4, Unit.MetrePerSecond) : null,
        };

    private static readonly Gen<Stray> Strays =
        from steps in Gen.Frequency((1, Gen.Const(0.0)), (1, Gen.Double[-6, 6]))
        from taken in Gen.Select(Gen.Int[1, 12], Gen.OneOf(Instrument.Video, Instrument.Radar, Instrument.Eye), Gen.OneOf<double?>(null, 30, 60, 120, 240))
        select new Stray(steps, taken.Item1, taken.Item2, taken.Item3);

    /// <summary>One lesson; every second begins with the readings of a worked case, so that patterns fire and meet.</summary>
    public static Gen<LessonFacts> One { get; } =
        from anyClub in Gen.OneOf(Enum.GetValues<Club>())
        from seed in Gen.Select(Gen.Bool, Gen.OneOf(HouseBook.Cases.ToArray()))
        let club = seed.Item1 ? seed.Item2.Club : anyClub
        let begun = seed.Item1 ? seed.Item2.Readings : []
        from student in Students
        from measures in Gen.Shuffle(HouseBook.Book.Measures.ToArray(), 0, 24)
        from strays in Strays.Array[24]
        from tried in Tried
        select new LessonFacts
        {
            AsOf = new LocalDate(2026, 5, 4),
            Student = student,
            Club = club,
            Readings = [.. begun, .. measures.Select((m, i) => Reading(m, club, strays[i])).Where(r => begun.All(b => b.Measure != r.Measure))],
            Tried = tried,
        };

    private static Gen<BodyLimit[]> Limits =>
        Gen.Select(Gen.OneOf(Enum.GetValues<Region>()), Gen.OneOf(Enum.GetValues<LimitStatus>()), (region, status) => new BodyLimit(region, status)).Array[1, 2];

    private static Gen<TriedDrill[]> Tried =>
        Gen.Select(Gen.OneOf(HouseBook.Book.Drills.ToArray()), Gen.Int[1, 10], Gen.OneOf(Enum.GetValues<TriedOutcome>()), (drill, n, outcome) => new TriedDrill(drill.Id, n, outcome))
            .Array[0, 4].Select(all => all.DistinctBy(t => t.Drill).ToArray());

    private static MeasuredValue Reading(Measure measure, Club club, Stray stray)
    {
        var range = HouseBook.Book.RangeOf(measure.Id, club)?.Limits ?? new Limits(null, null);
        var middle = ((range.Low ?? range.High ?? 40) + (range.High ?? range.Low ?? 40)) / 2;
        var half = ((range.High ?? middle) - (range.Low ?? middle)) / 2;
        var value = middle + (Math.Sign(stray.Steps) * half) + (stray.Steps * (measure.Step ?? 1) / 2);
        return new MeasuredValue
        {
            Measure = measure.Id,
            Value = new Quantity(Math.Round(value, 2), measure.Unit),
            Readings = stray.Readings,
            Instrument = stray.Instrument,
            FrameRate = stray.FrameRate,
        };
    }

    private sealed record Stray(double Steps, int Readings, Instrument Instrument, double? FrameRate);
}
