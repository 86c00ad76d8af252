using System.Globalization;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;

namespace CoachOffice.Drafting.Tests.Rules;

/// <summary>The numbers of the shipped measures and ranges, written down a second time: a slip in editing the rules shows here. Common practice, no source.</summary>
public sealed class ShippedNumbersTests
{
    /// <summary>Measure; range with driver, fairway, hybrid, iron, wedge; set-up error, scatter of a swing, step. A dash is not held here.</summary>
    private const string Table = """
        address-spine-tilt 4..12 2..10 1..9 0..8 -1..6 1.5 2.5 4
        address-forward-bend 27..42 29..43 30..44 31..45 33..47 1.5 2.5 4
        ball-forward-of-centre 11..23 6..16 3..12 0..8 -4..5 .8 1 3
        ball-distance 10..20 10..20 10..20 9..18 8..16 1 1 4
        stance-width 1.0..1.4 .95..1.3 .9..1.2 .8..1.15 .6..1.0 .03 .04 .1
        aim-shoulders -4..4 -4..4 -4..4 -4..4 -4..4 1.5 2 3
        lead-hand-grip 10..55 10..55 10..55 10..55 10..55 4 5 10
        top-shoulder-turn 78..108 76..106 75..105 73..103 65..98 4 5 8
        top-pelvis-turn 32..60 32..60 31..58 30..58 25..52 4 5 8
        top-spine-tilt 1..16 0..15 0..14 0..14 -2..12 1.5 2.5 4
        backswing-head-shift -9..2 -8..2 -7..2 -6..2 -5..2 .8 1.8 3
        backswing-pelvis-shift -5..4 -5..4 -5..3 -5..3 -4..3 .8 1.8 3
        max-pelvis-away -7..0 -7..0 -6..0 -6..0 -5..0 .8 1.8 3
        top-lead-wrist -28..14 -28..14 -28..14 -28..12 -28..14 4 5 8
        top-face -15..15 -15..15 -15..15 -15..15 -15..15 4 5 10
        downswing-head-shift -5..5 -5..5 -4..5 -4..5 -4..4 .8 1.8 3
        head-drift -8..3 -8..3 -7..3 -7..3 -6..3 .8 1.8 3
        shaft-over-plane -10..6 -10..6 -9..6 -9..6 -8..6 2 3 5
        lag-angle ..102 ..104 ..105 ..106 ..108 3 4.5 8
        shoulders-open-down -35..0 -35..0 -35..0 -35..2 -35..2 4 5 8
        downswing-pelvis-shift 4..16 4..15 4..14 3..13 2..10 .8 1.8 3
        pelvis-toward-ball ..3 ..3 ..3 ..3 ..2.5 .8 1.8 3
        forward-bend-change -9..8 -8..8 -8..8 -8..8 -7..8 2 3.5 5
        impact-spine-tilt 20..28 14..23 12..21 9..19 5..15 1.5 2.5 4
        impact-head-behind-ball 12..32 6..22 3..17 0..13 -2..9 1 2 4
        impact-shaft-lean -4..5 -1..6 1..8 3..12 4..14 1.5 2.5 4
        impact-pelvis-open 25..52 25..50 25..50 25..48 22..45 4 5 8
        impact-shoulders-open 8..35 10..38 12..40 12..42 12..42 4 5 8
        weight-forward-impact 55..85 60..88 65..90 68..92 70..95 3 4 8
        tempo-ratio 2.4..3.6 2.4..3.6 2.4..3.6 2.4..3.6 2.4..3.6 .1 .35 .4
        backswing-time .65..1.0 .65..1.0 .65..1.0 .65..1.0 .65..1.0 - .04 .1
        downswing-time .20..0.34 .20..0.34 .20..0.34 .20..0.34 .20..0.34 - .015 .04
        low-point none 0..8 1..9 3..12 2..10 1 3 3
        smash-factor 1.42..1.50 1.40..1.49 1.37..1.46 1.28..1.39 1.05..1.27 .01 .02 .03
        attack-angle -2..6 -4..0 -5..-1 -6..-1.5 -8..-3 .4 1.2 1.2
        club-path -4..4 -4..4 -4..4 -4..4 -4..4 .3 2.2 1.4
        face-to-path -2.5..2.5 -3..3 -3..3 -3..3 -4..4 .3 2.8 1.4
        contact-offset-toe -9..9 -8..8 -8..8 -7..7 -7..7 1 9 4
        contact-offset-high -3..9 -5..6 -6..5 -7..4 -8..4 1 7 4
        club-speed goal goal goal goal goal .2 .8 1.2
        ball-speed none none none none none .2 1.2 2
        start-direction none none none none none .3 2 -
        launch-angle none none none none none .3 2 -
        """;

    public static TheoryData<string> Rows => [.. Table.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_shipped_numbers_are_these(string row)
    {
        var cells = row.Split(' ');
        var measure = HouseBook.Book.Find(MeasureId.From(cells[0]))!;
        foreach (var club in Enum.GetValues<Club>()) Assert.Equal(cells[1 + (int)club], Written(HouseBook.Book.RangeOf(measure.Id, club), cells[1 + (int)club]));
        Same(cells[6], measure.SetupError);
        Same(cells[7], measure.SwingError);
        Same(cells[8], measure.Step);
    }

    [Fact]
    public void Sides_that_are_no_fault_and_the_floor_of_an_older_turn_are_these()
    {
        Assert.Equal([Side.Low], HouseBook.Book.Find(MeasureId.From("lag-angle"))!.NoFaultSides);
        Assert.Equal([Side.Low], HouseBook.Book.Find(MeasureId.From("pelvis-toward-ball"))!.NoFaultSides);
        var older = Assert.Single(HouseBook.Book.Adjustments, a => a.Levels is null);
        Assert.Equal(("top-shoulder-turn", 60, -8.0, 0.0), (older.Measure.Value, older.FromAge, older.LowBy, older.HighBy));
    }

    [Fact]
    public void Only_a_beginner_is_held_against_another_range() =>
        Assert.All(HouseBook.Book.Adjustments.Where(a => a.Levels is not null), a => Assert.Equal([Level.Beginner], a.Levels!));

    [Theory]
    [InlineData(Level.Beginner, -4, 4)]
    [InlineData(Level.Improver, -3, 3)]
    [InlineData(Level.Elite, -3, 3)]
    public void The_face_of_a_beginner_may_stray_a_degree_more(Level level, double low, double high)
    {
        var facts = HouseBook.Lesson(Club.Iron, HouseBook.Value("face-to-path", 3.5)) with { Student = HouseBook.Student with { Level = level } };
        Assert.Equal(new Limits(low, high), LessonGrading.Grade(HouseBook.Book, facts).Single().Range);
    }

    [Fact]
    public void Every_range_says_how_sure_we_are_of_it() => Assert.Empty(HouseBook.Book.Ranges.Where(r => r.Card is null).Select(r => r.Measure.Value).Distinct());

    /// <summary>The range as in the table when it is the same, or else as it stands in the rules.</summary>
    private static string Written(WantedRange? found, string expected)
    {
        if (found is null) return "none";
        if (found.FromGoal) return "goal";
        var ends = expected.Split("..");
        var same = ends.Length == 2 && found.Limits.Low == Number(ends[0]) && found.Limits.High == Number(ends[1]);
        return same ? expected : found.Limits.ToString();
    }

    private static void Same(string expected, double? actual)
    {
        if (expected != "-") Assert.Equal(Number(expected), actual);
    }

    private static double? Number(string text) => text.Length == 0 ? null : double.Parse(text, CultureInfo.InvariantCulture);
}
