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

/// <summary>Two records of one person become one, and nothing of either is lost.</summary>
public abstract class MergeStudentsTests(OfficeFixture fixture) : IAsyncLifetime
{
    private TestOffice _office = null!;
    private StudentId _stays;
    private StudentId _goes;

    public async ValueTask InitializeAsync()
    {
        _office = await fixture.Another(opened: true);
        _stays = await _office.Register(AStudent.Named("Anna", "Berg") with { Phone = "", Notes = "old notes" });
        _goes = await _office.Register(AStudent.Named("Ana", "Berg") with { Email = "ana@example.org", Notes = "new notes", Hand = Hand.Left });
    }

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
        var (stays, goes) = seed % 2 == 0 ? (_goes, _stays) : (_stays, _goes);
        await MergedLives.Live(_office, stays, seed);
        await MergedLives.Live(_office, goes, seed + 100);
        var (rows, money) = (await MergedLives.Rows(_office), await MergedLives.Money(_office));

        await Merges(stays, goes);

        Assert.Equal(rows, await MergedLives.Rows(_office));
        Assert.Equal(money, await MergedLives.Money(_office));
        Assert.Equal([], await _office.Read(db => StudentTies.Named(db, "SELECT \"Id\" FROM \"Students\" WHERE \"Id\" = {0}", goes.Value, [], CancellationToken.None)));
        Assert.DoesNotContain(await _office.Read(db => db.Messages.Select(m => m.OnceKey).ToListAsync()), k => k.Contains(goes.Value.ToString("N"), StringComparison.Ordinal));
        await _office.Must((StudentPage page) => page.Of(stays));
    }

    [Fact]
    public async Task Each_field_is_as_chosen_and_the_other_record_leads_there_and_holds_no_word()
    {
        await Merges(_stays, _goes, nameof(StudentDetails.Phone), nameof(StudentDetails.Notes));

        var student = await _office.Do((ReadStudent read) => read.Of(_stays));
        Assert.Equal(("Anna Berg", "anna.berg@example.org", "+44 1632 960 001", "new notes", Hand.Right), (student!.FullName, student.Email, student.Phone, student.Notes, student.Hand));
        var signpost = await _office.Do((ReadStudent read) => read.Of(_goes));
        Assert.Equal(_stays, signpost!.MergedInto);
        Assert.NotNull(signpost.ErasedAt);
        Assert.Empty(await TextSearch.Everywhere(_office, "ana@example.org", "ana berg"));
        Assert.Equal([$"into:{_stays.Value}", $"taken-in:{_goes.Value}"], await _office.Read(db => db.AuditEntries.Where(a => a.Action.Contains("merged")).Select(a => a.Detail!).OrderBy(d => d).ToListAsync()));
        Assert.Equal(1, (await _office.Do((FindStudents find) => find.Matching("", 1, archived: false))).Total);
        Assert.Equal(0, (await _office.Do((FindStudents find) => find.Matching("", 1, archived: true))).Total);
    }

    [Fact]
    public async Task Whoever_was_taken_in_before_leads_to_the_last_one()
    {
        var third = await _office.Register(AStudent.Named("Anne", "Berg"));
        await Merges(_stays, _goes);
        await Merges(third, _stays);

        Assert.Equal([third, third], (await _office.Read(db => db.Students.Where(s => s.MergedInto != null).Select(s => s.MergedInto!.Value).ToListAsync())));
    }

    [Fact]
    public async Task The_stricter_wins_reminders_stay_stopped_and_a_withdrawn_consent_is_not_brought_back()
    {
        var coach = _office.Coach.Account!.Value;
        await _office.Change(async db =>
        {
            var ids = new SeededIds(77);
            var withdrawn = MediaConsent.Give(ids.Next(), _goes, "Ana", new LocalDate(2026, 1, 1), coach, _office.Now - Duration.FromDays(9));
            withdrawn.Withdraw(coach, _office.Now - Duration.FromDays(8));
            db.AddRange(withdrawn, MediaConsent.Give(ids.Next(), _stays, "Anna", new LocalDate(2026, 2, 1), coach, _office.Now - Duration.FromDays(1)));
            (await db.Students.SingleAsync(s => s.Id == _goes)).StopMessages(_office.Now);
        });
        Assert.True((await _office.Must((MergePage page) => page.Of(_stays, _goes, _office.Coach))).ConsentEnds);

        await Merges(_stays, _goes);

        var student = await _office.Do((ReadStudent read) => read.Of(_stays));
        Assert.NotNull(student!.MessagesStoppedAt);
        Assert.Equal(MediaPermission.Withdrawn, await _office.Do((UseCases.Media.MediaConsents consents) => consents.For(student)));
        Assert.Equal(2, await _office.Read(db => db.MediaConsents.CountAsync(c => c.WithdrawnAt != null)));
    }

    [Fact]
    public async Task Links_of_the_record_that_goes_end_and_those_of_the_other_stay_open()
    {
        var (one, other) = (await _office.GivePlan(_stays), await _office.GivePlan(_goes));
        var life = new Interval(_office.Now, _office.Now + Duration.FromDays(30));
        await _office.Change(db =>
        {
            db.AddRange(PrivateLink.Issue(new SeededIds(5).Next(), "a", _stays, one, life), PrivateLink.Issue(new SeededIds(6).Next(), "b", _goes, other, life));
            return Task.CompletedTask;
        });

        await Merges(_stays, _goes);

        Assert.Equal([("a", false), ("b", true)], (await _office.Read(db => db.PrivateLinks.OrderBy(l => l.TokenSha256).ToListAsync())).Select(l => (l.TokenSha256, l.RevokedAt is not null)));
    }

    [Fact]
    public async Task A_group_or_a_file_both_have_counts_once()
    {
        var group = await _office.Must((MakeGroup make) => make.Named(GroupId.From(new SeededIds(3).Next()), "Both", _office.Desk));
        foreach (var student in new[] { _stays, _goes }) await _office.Must((PutIntoGroup put) => put.The(student, group, _office.Desk));
        await _office.Change(db =>
        {
            foreach (var (i, student) in new[] { _stays, _goes }.Index())
            {
                var file = DeviceFile.Open(new SeededIds(30 + i).Next(), student, _office.Coach, _office.Now);
                file.Call("swings.csv", "same");
                file.Close(new FileOutcome(), _office.Now);
                db.Add(file);
            }

            return Task.CompletedTask;
        });

        await Merges(_stays, _goes);

        Assert.Equal(_stays, (await _office.Must((GroupPage page) => page.Of(group))).Members.Single().Id);
        var shas = await _office.Read(db => db.DeviceFiles.Where(f => f.StudentId == _stays).Select(f => f.ImportedSha256).ToListAsync());
        Assert.Equal([null, "same"], shas.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Whoever_pays_is_as_chosen_and_the_others_account_stays()
    {
        var (one, other) = (Payer.Register(PayerId.From(new SeededIds(41).Next()), new PayerDetails { Name = "One" }, _office.Now), Payer.Register(PayerId.From(new SeededIds(42).Next()), new PayerDetails { Name = "Other" }, _office.Now));
        await _office.Change(async db =>
        {
            db.AddRange(one, other);
            (await db.Students.SingleAsync(s => s.Id == _stays)).PaidBy(one.Id);
            (await db.Students.SingleAsync(s => s.Id == _goes)).PaidBy(other.Id);
        });
        var shown = await _office.Must((MergePage page) => page.Of(_stays, _goes, _office.Coach));
        Assert.True(shown.TwoPayers);
        Assert.Equal(("One", "Other"), shown.Fields.Where(f => f.Key == "PayerId").Select(f => (f.Stays, f.Goes)).Single());

        await Merges(_stays, _goes, "PayerId");

        Assert.Equal(other.Id, (await _office.Do((ReadStudent read) => read.Of(_stays)))!.PayerId);
        Assert.Equal(2, await _office.Read(db => db.Payers.CountAsync(p => p.ErasedAt == null)));
    }

    [Fact]
    public async Task The_books_let_an_entry_go_from_a_record_to_the_one_that_took_it_in_and_nothing_else_change()
    {
        await MergedLives.Pay(_office, _goes, 1);
        var third = await _office.Register(AStudent.Named("Cy", "Other"));
        await Refused($"UPDATE \"LedgerEntries\" SET \"StudentId\" = '{Stored(third)}'");
        await Merges(_stays, _goes);
        Assert.Equal(_stays, (await _office.Read(db => db.LedgerEntries.SingleAsync())).StudentId);

        var columns = await _office.Read(db => Task.FromResult(db.Model.FindEntityType(typeof(LedgerEntry))!.GetProperties().Select(p => p.GetColumnName()).ToList()));
        Assert.Equal(15, columns.Count);
        foreach (var column in columns.Where(c => c is "Text" or "Reference" or "By" or "Kind")) await Refused($"UPDATE \"LedgerEntries\" SET \"StudentId\" = \"StudentId\", \"{column}\" = 'other'");
        foreach (var column in columns.Except(["StudentId", "Text", "Reference", "By", "Kind", "On", "At"])) await Refused($"UPDATE \"LedgerEntries\" SET \"{column}\" = '{Stored(third)}'");
        await Refused($"UPDATE \"LedgerEntries\" SET \"StudentId\" = '{Stored(_goes)}'");
    }

    [Fact]
    public async Task Bookings_come_over_with_the_time_they_take_but_not_two_at_once_that_are_to_come()
    {
        var diary = await Diary.Of(_office);
        var at = new LocalDateTime(2026, 3, 4, 10, 0);
        var booking = await diary.Book(diary.At(at, _goes));
        await diary.Book(diary.At(at, _stays) with { CoachId = _office.Owner.Account!.Value });
        Assert.Equal("Both records are booked on 4 March 2026, 10:00. Cancel one of the two bookings first.", (await _office.Must((MergePage page) => page.Of(_stays, _goes, _office.Coach))).InTheWay.Single().Sentence);
        var order = await Order(_stays, _goes);
        Assert.Equal("booked-twice", (await _office.Refuses((MergeStudents merge) => merge.As(order, _office.Coach))).Single().Code);

        _office.Time.Advance(TimeSpan.FromDays(3));
        var later = await diary.Book(diary.At(at.PlusDays(7), _goes));
        await Merges(_stays, _goes);

        var seats = await _office.Read(db => db.Seats.Where(s => s.StudentId == _stays).Select(s => s.BookingId).ToListAsync());
        Assert.Equal(3, seats.Count);
        Assert.Contains(booking, seats);
        Assert.Contains(later, seats);
        Assert.Equal(1, await _office.Read(db => db.TakenTimes.CountAsync(t => t.BookingId == later && t.Holder == _stays.Value)));
        Assert.Equal(0, await _office.Read(db => db.TakenTimes.CountAsync(t => t.Holder == _goes.Value)));
        var twice = await _office.Do((BookLesson book) => book.As(diary.At(at.PlusDays(7), _stays) with { CoachId = _office.Owner.Account!.Value }, _office.Desk));
        Assert.False(twice.Succeeded);
    }

    [Fact]
    public async Task What_cannot_be_is_refused_and_nothing_has_moved()
    {
        await _office.GivePlan(_goes);
        var order = await Order(_stays, _goes);
        Assert.Equal("same-record", (await _office.Refuses((MergeStudents merge) => merge.As(order with { Goes = _stays }, _office.Coach))).Single().Code);
        Assert.Equal(NotAllowed.Code, (await _office.Refuses((MergeStudents merge) => merge.As(order, _office.Desk))).Single().Code);
        Assert.Equal(Clash.Code, (await _office.Refuses((MergeStudents merge) => merge.As(order with { GoesVersion = 7 }, _office.Coach))).Single().Code);
        Assert.Equal("student-not-found", (await _office.Refuses((MergeStudents merge) => merge.As(order with { Goes = StudentId.From(new SeededIds(9).Next()) }, _office.Coach))).Single().Code);

        var junior = await _office.Register(AStudent.Junior("Anna", "Berg"));
        var young = await Order(_stays, junior);
        Assert.Equal("guardian-needed", (await _office.Refuses((MergeStudents merge) => merge.As(young with { Taken = [nameof(StudentDetails.BirthDate)] }, _office.Coach))).Single().Code);
        Assert.Equal(1, await _office.Read(db => db.Plans.CountAsync(p => p.StudentId == _goes)));
        Assert.Null((await _office.Do((ReadStudent read) => read.Of(junior)))!.MergedInto);
    }

    [Fact]
    public async Task Records_that_look_alike_are_found_with_the_reason_the_likelier_first()
    {
        _office.Time.Advance(TimeSpan.FromSeconds(1));
        var kid = await _office.Register(AStudent.Named("Kid", "Berg") with { Email = "anna.berg@example.org", BirthDate = new LocalDate(2001, 1, 1), Phone = "" });
        var twin = await _office.Register(AStudent.Named("ANA", "bérg") with { Email = "", BirthDate = null, Phone = "01632 960 001" });

        var pairs = await _office.Do((FindDoubles find) => find.Now());

        Assert.Equal([(_goes, twin, "same name and phone", false), (_stays, kid, "same mail address", true)], pairs.Select(p => (p.One, p.Other, p.Why, p.MayBeFamily)));
    }

    // As the database writes an id; both take it so.
    private static string Stored(StudentId id) => id.Value.ToString().ToUpperInvariant();

    private async Task Refused(string sql)
    {
        var fault = await Record.ExceptionAsync(() => _office.Read(db => db.Database.ExecuteSqlRawAsync(sql)));
        Assert.Contains("never change", fault?.Message, StringComparison.Ordinal);
    }

    private async Task<MergeOrder> Order(StudentId stays, StudentId goes, params string[] taken)
    {
        var view = await _office.Must((MergePage page) => page.Of(stays, goes, _office.Coach));
        return new MergeOrder(stays, view.Stays.Version, goes, view.Goes.Version, taken);
    }

    private async Task Merges(StudentId stays, StudentId goes, params string[] taken)
    {
        var order = await Order(stays, goes, taken);
        await _office.Must((MergeStudents merge) => merge.As(order, _office.Coach));
    }
}

public sealed class MergeStudentsOnSqlite(SqliteOffice office) : MergeStudentsTests(office), IClassFixture<SqliteOffice>;

public sealed class MergeStudentsOnPostgreSql(PostgreSqlOffice office) : MergeStudentsTests(office), IClassFixture<PostgreSqlOffice>;
