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

/// <summary>Two records of one person become one: what is chosen, what wins, what is refused.</summary>
public abstract class MergeStudentsTests(OfficeFixture fixture) : IAsyncLifetime
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

    [Fact]
    public async Task Each_field_is_as_chosen_and_the_other_record_leads_there_and_holds_no_word()
    {
        await _two.Merge(nameof(StudentDetails.Phone), nameof(StudentDetails.Notes));

        var student = await Office.Do((ReadStudent read) => read.Of(Stays));
        Assert.Equal(("Anna Berg", "anna.berg@example.org", "+44 1632 960 001", "new notes", Hand.Right), (student!.FullName, student.Email, student.Phone, student.Notes, student.Hand));
        var signpost = await Office.Do((ReadStudent read) => read.Of(Goes));
        Assert.Equal(Stays, signpost!.MergedInto);
        Assert.NotNull(signpost.ErasedAt);
        Assert.Empty(await TextSearch.Everywhere(Office, "ana@example.org", "ana berg"));
        Assert.Equal([$"into:{Stays.Value}", $"taken-in:{Goes.Value}"], await Office.Read(db => db.AuditEntries.Where(a => a.Action.Contains("merged")).Select(a => a.Detail!).OrderBy(d => d).ToListAsync()));
        Assert.Equal(1, (await Office.Do((FindStudents find) => find.Matching("", 1, archived: false))).Total);
        Assert.Equal(0, (await Office.Do((FindStudents find) => find.Matching("", 1, archived: true))).Total);
    }

    [Fact]
    public async Task Whoever_was_taken_in_before_leads_to_the_last_one()
    {
        var third = await Office.Register(AStudent.Named("Anne", "Berg"));
        await _two.Merge();
        await _two.Merge(third, Stays);

        Assert.Equal([third, third], (await Office.Read(db => db.Students.Where(s => s.MergedInto != null).Select(s => s.MergedInto!.Value).ToListAsync())));
    }

    [Fact]
    public async Task The_stricter_wins_reminders_stay_stopped_and_a_withdrawn_consent_is_not_brought_back()
    {
        var coach = Office.Coach.Account!.Value;
        await Office.Change(async db =>
        {
            var ids = new SeededIds(77);
            var withdrawn = MediaConsent.Give(ids.Next(), Goes, "Ana", new LocalDate(2026, 1, 1), coach, Office.Now - Duration.FromDays(9));
            withdrawn.Withdraw(coach, Office.Now - Duration.FromDays(8));
            db.AddRange(withdrawn, MediaConsent.Give(ids.Next(), Stays, "Anna", new LocalDate(2026, 2, 1), coach, Office.Now - Duration.FromDays(1)));
            (await db.Students.SingleAsync(s => s.Id == Goes)).Stop(MessagePurpose.Encouragement, Office.Now);
        });
        Assert.True((await Office.Must((MergePage page) => page.Of(Stays, Goes, Office.Coach))).ConsentEnds);

        await _two.Merge();

        var student = await Office.Do((ReadStudent read) => read.Of(Stays));
        Assert.NotNull(student!.MessagesStoppedAt);
        Assert.Equal(MediaPermission.Withdrawn, await Office.Do((UseCases.Media.MediaConsents consents) => consents.For(student)));
        Assert.Equal(2, await Office.Read(db => db.MediaConsents.CountAsync(c => c.WithdrawnAt != null)));
    }

    [Fact]
    public async Task Whoever_pays_is_as_chosen_and_the_others_accountStays()
    {
        var (one, other) = (Payer.Register(PayerId.From(new SeededIds(41).Next()), new PayerDetails { Name = "One" }, Office.Now), Payer.Register(PayerId.From(new SeededIds(42).Next()), new PayerDetails { Name = "Other" }, Office.Now));
        await Office.Change(async db =>
        {
            db.AddRange(one, other);
            (await db.Students.SingleAsync(s => s.Id == Stays)).PaidBy(one.Id);
            (await db.Students.SingleAsync(s => s.Id == Goes)).PaidBy(other.Id);
        });
        var shown = await Office.Must((MergePage page) => page.Of(Stays, Goes, Office.Coach));
        Assert.True(shown.TwoPayers);
        Assert.Equal(("One", "Other"), shown.Fields.Where(f => f.Key == "PayerId").Select(f => (f.Stays, f.Goes)).Single());

        await _two.Merge("PayerId");

        Assert.Equal(other.Id, (await Office.Do((ReadStudent read) => read.Of(Stays)))!.PayerId);
        Assert.Equal(2, await Office.Read(db => db.Payers.CountAsync(p => p.ErasedAt == null)));
    }

    [Fact]
    public async Task What_cannot_be_is_refused_and_nothing_has_moved()
    {
        await Office.GivePlan(Goes);
        var order = await _two.Order(Stays, Goes);
        Assert.Equal("same-record", (await Office.Refuses((MergeStudents merge) => merge.As(order with { Goes = Stays }, Office.Coach))).Single().Code);
        Assert.Equal(NotAllowed.Code, (await Office.Refuses((MergeStudents merge) => merge.As(order, Office.Desk))).Single().Code);
        Assert.Equal(Clash.Code, (await Office.Refuses((MergeStudents merge) => merge.As(order with { GoesVersion = 7 }, Office.Coach))).Single().Code);
        Assert.Equal("student-not-found", (await Office.Refuses((MergeStudents merge) => merge.As(order with { Goes = StudentId.From(new SeededIds(9).Next()) }, Office.Coach))).Single().Code);

        var junior = await Office.Register(AStudent.Junior("Anna", "Berg"));
        var young = await _two.Order(Stays, junior);
        Assert.Equal("guardian-needed", (await Office.Refuses((MergeStudents merge) => merge.As(young with { Taken = [nameof(StudentDetails.BirthDate)] }, Office.Coach))).Single().Code);
        Assert.Equal(1, await Office.Read(db => db.Plans.CountAsync(p => p.StudentId == Goes)));
        Assert.Null((await Office.Do((ReadStudent read) => read.Of(junior)))!.MergedInto);
    }

    [Fact]
    public async Task Records_that_look_alike_are_found_with_the_reason_the_likelier_first()
    {
        Office.Time.Advance(TimeSpan.FromSeconds(1));
        var kid = await Office.Register(AStudent.Named("Kid", "Berg") with { Email = "anna.berg@example.org", BirthDate = new LocalDate(2001, 1, 1), Phone = "" });
        var twin = await Office.Register(AStudent.Named("ANA", "bérg") with { Email = "", BirthDate = null, Phone = "01632 960 001" });

        var pairs = await Office.Do((FindDoubles find) => find.Now());

        Assert.Equal([(Goes, twin, "same name and phone", false), (Stays, kid, "same mail address", true)], pairs.Select(p => (p.One, p.Other, p.Why, p.MayBeFamily)));
    }
}

public sealed class MergeStudentsOnSqlite(SqliteOffice office) : MergeStudentsTests(office), IClassFixture<SqliteOffice>;

public sealed class MergeStudentsOnPostgreSql(PostgreSqlOffice office) : MergeStudentsTests(office), IClassFixture<PostgreSqlOffice>;
