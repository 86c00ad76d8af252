using CoachOffice.Data.Students;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.Domain.Media;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Groups;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Students.Groups;
using CoachOffice.UseCases.Students.Merging;
using CoachOffice.UseCases.Tests.Bookings;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Students.Merging;

/// <summary>Everything that hangs on two records of one person comes over to the one that stays.</summary>
public abstract class MergedRowsTests(OfficeFixture fixture) : IAsyncLifetime
{
    private TwoRecords _two = null!;

    private TestOffice Office => _two.Office;

    private StudentId Stays => _two.Stays;

    private StudentId Goes => _two.Goes;

    public async ValueTask InitializeAsync() => _two = await TwoRecords.In(fixture);

    public ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        return ValueTask.CompletedTask;
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public async Task No_row_is_lost_and_none_names_the_record_that_went(int seed)
    {
        var (stays, goes) = seed % 2 == 0 ? (Goes, Stays) : (Stays, Goes);
        await MergedLives.Live(Office, stays, seed);
        await MergedLives.Live(Office, goes, seed + 100);
        var (rows, money) = (await MergedLives.Rows(Office), await MergedLives.Money(Office));

        await _two.Merge(stays, goes);

        Assert.Equal(rows, await MergedLives.Rows(Office));
        Assert.Equal(money, await MergedLives.Money(Office));
        Assert.Equal([], await Office.Read(db => StudentTies.Named(db, "SELECT \"Id\" FROM \"Students\" WHERE \"Id\" = {0}", goes.Value, [], CancellationToken.None)));
        Assert.DoesNotContain(await Office.Read(db => db.Messages.Select(m => m.OnceKey).ToListAsync()), k => k.Contains(goes.Value.ToString("N"), StringComparison.Ordinal));
        await Office.Must((StudentPage page) => page.Of(stays));
    }

    [Fact]
    public async Task Links_of_the_record_thatGoes_end_and_those_of_the_other_stay_open()
    {
        var (one, other) = (await Office.GivePlan(Stays), await Office.GivePlan(Goes));
        var life = new Interval(Office.Now, Office.Now + Duration.FromDays(30));
        await Office.Change(db =>
        {
            db.AddRange(PrivateLink.Issue(new SeededIds(5).Next(), "a", Stays, one, life), PrivateLink.Issue(new SeededIds(6).Next(), "b", Goes, other, life));
            return Task.CompletedTask;
        });

        await _two.Merge();

        Assert.Equal([("a", false), ("b", true)], (await Office.Read(db => db.PrivateLinks.OrderBy(l => l.TokenSha256).ToListAsync())).Select(l => (l.TokenSha256, l.RevokedAt is not null)));
    }

    [Fact]
    public async Task A_group_or_a_file_both_have_counts_once()
    {
        var group = await Office.Must((MakeGroup make) => make.Named(GroupId.From(new SeededIds(3).Next()), "Both", Office.Desk));
        foreach (var student in new[] { Stays, Goes }) await Office.Must((PutIntoGroup put) => put.The(student, group, Office.Desk));
        await Office.Change(db =>
        {
            foreach (var (i, student) in new[] { Stays, Goes }.Index())
            {
                var file = DeviceFile.Open(new SeededIds(30 + i).Next(), student, Office.Coach, Office.Now);
                file.Call("swings.csv", "same");
                file.Close(new FileOutcome(), Office.Now);
                db.Add(file);
            }

            return Task.CompletedTask;
        });

        await _two.Merge();

        Assert.Equal(Stays, (await Office.Must((GroupPage page) => page.Of(group))).Members.Single().Id);
        var shas = await Office.Read(db => db.DeviceFiles.Where(f => f.StudentId == Stays).Select(f => f.ImportedSha256).ToListAsync());
        Assert.Equal([null, "same"], shas.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task The_books_let_an_entry_go_from_a_record_to_the_one_that_took_it_in_and_nothing_else_change()
    {
        await MergedLives.Pay(Office, Goes, 1);
        var third = await Office.Register(AStudent.Named("Cy", "Other"));
        await Refused($"UPDATE \"LedgerEntries\" SET \"StudentId\" = '{Stored(third)}'");
        await _two.Merge();
        Assert.Equal(Stays, (await Office.Read(db => db.LedgerEntries.SingleAsync())).StudentId);

        var columns = await Office.Read(db => Task.FromResult(db.Model.FindEntityType(typeof(LedgerEntry))!.GetProperties().Select(p => p.GetColumnName()).ToList()));
        Assert.Equal(15, columns.Count);
        foreach (var column in columns.Where(c => c is "Text" or "Reference" or "By" or "Kind")) await Refused($"UPDATE \"LedgerEntries\" SET \"StudentId\" = \"StudentId\", \"{column}\" = 'other'");
        foreach (var column in columns.Except(["StudentId", "Text", "Reference", "By", "Kind", "On", "At"])) await Refused($"UPDATE \"LedgerEntries\" SET \"{column}\" = '{Stored(third)}'");
        await Refused($"UPDATE \"LedgerEntries\" SET \"StudentId\" = '{Stored(Goes)}'");
    }

    [Fact]
    public async Task Bookings_come_over_with_the_time_they_take_but_not_two_at_once_that_are_to_come()
    {
        var diary = await Diary.Of(Office);
        var at = new LocalDateTime(2026, 3, 4, 10, 0);
        var booking = await diary.Book(diary.At(at, Goes));
        await diary.Book(diary.At(at, Stays) with { CoachId = Office.Owner.Account!.Value });
        Assert.Equal("Both records are booked on 4 March 2026, 10:00. Cancel one of the two bookings first.", (await Office.Must((MergePage page) => page.Of(Stays, Goes, Office.Coach))).InTheWay.Single().Sentence);
        var order = await _two.Order(Stays, Goes);
        Assert.Equal("booked-twice", (await Office.Refuses((MergeStudents merge) => merge.As(order, Office.Coach))).Single().Code);

        Office.Time.Advance(TimeSpan.FromDays(3));
        var later = await diary.Book(diary.At(at.PlusDays(7), Goes));
        await _two.Merge();

        var seats = await Office.Read(db => db.Seats.Where(s => s.StudentId == Stays).Select(s => s.BookingId).ToListAsync());
        Assert.Equal(3, seats.Count);
        Assert.Contains(booking, seats);
        Assert.Contains(later, seats);
        Assert.Equal(1, await Office.Read(db => db.TakenTimes.CountAsync(t => t.BookingId == later && t.Holder == Stays.Value)));
        Assert.Equal(0, await Office.Read(db => db.TakenTimes.CountAsync(t => t.Holder == Goes.Value)));
        var twice = await Office.Do((BookLesson book) => book.As(diary.At(at.PlusDays(7), Stays) with { CoachId = Office.Owner.Account!.Value }, Office.Desk));
        Assert.False(twice.Succeeded);
    }

    [Fact]
    public async Task What_was_saved_for_the_record_that_went_at_the_moment_of_the_merge_comes_over_with_the_next_sweep()
    {
        await _two.Merge();
        Assert.Equal(0, await Office.Do((SweepSignposts sweep) => sweep.Once(CancellationToken.None)));
        await Office.GivePlan(Goes);

        Assert.Equal(1, await Office.Do((SweepSignposts sweep) => sweep.Once(CancellationToken.None)));

        Assert.Equal(1, await Office.Read(db => db.Lessons.CountAsync(l => l.StudentId == Stays)));
        Assert.Equal(1, await Office.Read(db => db.AuditEntries.CountAsync(a => a.Action == "student-merged-late" && a.SubjectId == Stays.Value)));
        Assert.Equal(0, await Office.Do((SweepSignposts sweep) => sweep.Once(CancellationToken.None)));
    }

    // As the database writes an id; both take it so.
    private static string Stored(StudentId id) => id.Value.ToString().ToUpperInvariant();

    private async Task Refused(string sql)
    {
        var fault = await Record.ExceptionAsync(() => Office.Read(db => db.Database.ExecuteSqlRawAsync(sql)));
        Assert.Contains("never change", fault?.Message, StringComparison.Ordinal);
    }
}

public sealed class MergedRowsOnSqlite(SqliteOffice office) : MergedRowsTests(office), IClassFixture<SqliteOffice>;

public sealed class MergedRowsOnPostgreSql(PostgreSqlOffice office) : MergedRowsTests(office), IClassFixture<PostgreSqlOffice>;
