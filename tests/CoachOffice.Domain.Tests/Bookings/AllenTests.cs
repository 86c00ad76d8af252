using CoachOffice.Domain.Bookings;
using NodaTime;

namespace CoachOffice.Domain.Tests.Bookings;

/// <summary>
/// Allen JF (1983), Maintaining knowledge about temporal intervals, Communications of the ACM 26(11):832-843: thirteen relations and how they compose;
/// letters after T. Alspaugh (p precedes, m meets, o overlaps, F finished by, D contains, s starts, e equals, S started by, d during, f finishes,
/// O overlapped by, M met by, P preceded by), read for half-open intervals. The table has 409 relations, 97 cells with one and 3 with all of them.
/// </summary>
public sealed class AllenTests
{
    private const string Relations = "pmoFDseSdfOMP";

    /// <summary>Row composed with column, in the order of <see cref="Relations"/>; <c>*</c> is every relation.</summary>
    private static readonly string[] Composed =
    [
        "p p p p p p p p pmosd pmosd pmosd pmosd *",
        "p p p p p m m m osd osd osd Fef DSOMP",
        "p p pmo pmo pmoFD o o oFD osd osd oFDseSdfO DSO DSOMP",
        "p m o F D o F D osd Fef DSO DSO DSOMP",
        "pmoFD oFD oFD D D oFD D D oFDseSdfO DSO DSO DSO DSOMP",
        "p p pmo pmo pmoFD s s seS d d dfO M P",
        "p m o F D s e S d f O M P",
        "pmoFD oFD oFD D D seS S S dfO O O M P",
        "p p pmosd pmosd * d d dfOMP d d dfOMP P P",
        "p m osd Fef DSOMP d f OMP d f OMP P P",
        "pmoFD oFD oFDseSdfO DSO DSOMP dfO O OMP dfO O OMP P P",
        "pmoFD seS dfO M P dfO M P dfO M P P P",
        "* dfOMP dfOMP P P dfOMP P P dfOMP P P P P",
    ];

    private static readonly Interval[] All =
    [
        .. from start in Enumerable.Range(0, 6)
           from end in Enumerable.Range(start + 1, 6 - start)
           select new Interval(Instant.FromUnixTimeSeconds(start), Instant.FromUnixTimeSeconds(end)),
    ];

    [Fact]
    public void The_table_is_the_published_one()
    {
        var cells = Composed.SelectMany(row => row.Split(' ')).Select(c => c == "*" ? Relations : c).ToList();

        Assert.Equal((169, 409, 97, 3), (cells.Count, cells.Sum(c => c.Length), cells.Count(c => c.Length == 1), cells.Count(c => c.Length == 13)));
    }

    [Fact]
    public void Two_times_collide_in_just_nine_of_the_thirteen_relations()
    {
        var seen = new HashSet<char>();
        foreach (var (one, other) in from a in All from b in All select (a, b))
        {
            var relation = Between(one, other);
            seen.Add(relation);
            Assert.Equal("oFDseSdfO".Contains(relation, StringComparison.Ordinal), one.Overlaps(other));
        }

        Assert.Equal(Relations.Order(), seen.Order());
    }

    /// <summary>What the overlap test says of two pairs allows for the third pair just what the table allows.</summary>
    [Fact]
    public void Collisions_compose_as_the_table_says()
    {
        var found = (from a in All from b in All from c in All select (Cell: (Between(a, b), Between(b, c)), Collide: a.Overlaps(c))).ToLookup(t => t.Cell, t => t.Collide);

        foreach (var (row, column) in from r in Relations from c in Relations select (r, c))
        {
            var cell = Composed[Relations.IndexOf(row, StringComparison.Ordinal)].Split(' ')[Relations.IndexOf(column, StringComparison.Ordinal)];
            var allowed = (cell == "*" ? Relations : cell).Select(r => "oFDseSdfO".Contains(r, StringComparison.Ordinal)).Distinct().Order();
            Assert.Equal(allowed, found[(row, column)].Distinct().Order());
        }
    }

    [Theory]
    [InlineData("09:00", "10:00", "10:00", "11:00", false)]
    [InlineData("09:00", "10:00", "09:59", "10:30", true)]
    public void A_lesson_may_begin_where_another_ends(string start, string end, string otherStart, string otherEnd, bool collide) =>
        Assert.Equal(collide, At(start, end).Overlaps(At(otherStart, otherEnd)));

    private static Interval At(string start, string end) => new(
        Instant.FromDateTimeUtc(DateTime.SpecifyKind(DateTime.Parse($"2026-03-02 {start}"), DateTimeKind.Utc)),
        Instant.FromDateTimeUtc(DateTime.SpecifyKind(DateTime.Parse($"2026-03-02 {end}"), DateTimeKind.Utc)));

    private static char Between(Interval a, Interval b) => (a.Start.CompareTo(b.Start), a.End.CompareTo(b.End)) switch
    {
        _ when a.End < b.Start => 'p',
        _ when a.End == b.Start => 'm',
        _ when a.Start > b.End => 'P',
        _ when a.Start == b.End => 'M',
        ( < 0, < 0) => 'o',
        ( < 0, 0) => 'F',
        ( < 0, > 0) => 'D',
        (0, < 0) => 's',
        (0, 0) => 'e',
        (0, > 0) => 'S',
        ( > 0, < 0) => 'd',
        ( > 0, 0) => 'f',
        _ => 'O',
    };
}
