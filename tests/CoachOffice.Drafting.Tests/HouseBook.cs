using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Patterns;
using CoachOffice.Drafting.Reading;
using NodaTime;

namespace CoachOffice.Drafting.Tests;

/// <summary>The rulebook that ships, read and compiled once for all tests, and plain facts to draft from.</summary>
internal static class HouseBook
{
    private static readonly Lazy<CompiledRulebook> Once = new(() => CompiledRulebook.Compile(RulebookReader.Load(RulebookText.FromDirectory(Path.Combine(Root, "rules")).Value).Value));

    public static CompiledRulebook Compiled => Once.Value;

    public static Rulebook Book => Compiled.Book;

    public static IReadOnlyList<PatternCase> Cases => Compiled.Loaded.Cases;

    /// <summary>The folder of CoachOffice.sln.</summary>
    public static string Root => FindRoot();

    public static StudentFacts Student { get; } = new()
    {
        Hand = Hand.Right,
        Level = Level.Improver,
        BirthYear = 1988,
        MinutesPerWeek = 90,
        DaysPerWeek = 3,
        Room = Room.Range,
        Kit = [Kit.Ball, Kit.Tee, Kit.AlignmentStick, Kit.Mirror, Kit.Towel],
    };

    public static LessonFacts Lesson(Club club, params IReadOnlyList<MeasuredValue> readings) =>
        new() { AsOf = new LocalDate(2026, 5, 4), Student = Student, Club = club, Readings = readings };

    public static LessonFacts Lesson(PatternCase one) =>
        Lesson(one.Club, one.Readings) with { Student = Student with { ClubSpeedGoal = one.ClubSpeedGoal } };

    public static LessonContext Context(LessonFacts facts) => new(facts.Club, LessonGrading.Grade(Book, facts));

    public static MeasuredValue Value(string measure, double value, int readings = 5)
    {
        var found = Book.Find(MeasureId.From(measure))!;
        return new MeasuredValue { Measure = found.Id, Value = new Quantity(value, found.Unit), Readings = readings, Instrument = found.Instruments[0] };
    }

    /// <summary>The shipped book with other patterns.</summary>
    public static Rulebook With(IReadOnlyList<Pattern> patterns) => new()
    {
        Name = Book.Name,
        Measures = Book.Measures,
        Ranges = Book.Ranges,
        Adjustments = Book.Adjustments,
        Patterns = patterns,
        TrainAfter = Book.TrainAfter,
        Goals = Book.Goals,
        Drills = Book.Drills,
        Progressions = Book.Progressions,
        Cautions = Book.Cautions,
        Dosage = Book.Dosage,
    };

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "CoachOffice.sln"))) folder = folder.Parent;
        return folder?.FullName ?? throw new DirectoryNotFoundException("The tests run inside the checkout.");
    }
}
