using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.Access;

public abstract class OpenPracticeTests(OfficeFixture fixture)
{
    [Fact]
    public async Task The_first_run_makes_the_practice_its_owner_and_an_audit_row()
    {
        var office = await fixture.Another(opened: false);
        Assert.Null(await office.Do((ReadPractice read) => read.Now()));

        var owner = await office.Must((OpenPractice open) => open.For(TestPractice.FirstRun));

        var practice = await office.Do((ReadPractice read) => read.Now());
        Assert.Equal("Harbour Road Golf Practice", practice!.Name);
        Assert.Equal(1, practice.Version);
        var account = await office.Read(db => db.Users.SingleAsync());
        Assert.Equal((owner, Policy.Owner, "Olive Owner"), (account.AccountId, account.Policy, account.DisplayName));
        var audit = await office.Read(db => db.AuditEntries.SingleAsync());
        Assert.Equal(("practice-opened", owner.Value, office.Now), (audit.Action, audit.Account, audit.At));
    }

    [Fact]
    public async Task Of_two_first_runs_at_once_one_gives_an_owner_and_the_other_a_sentence()
    {
        var office = await fixture.Another(opened: false);
        var forms = Enumerable.Range(1, 4).Select(n => TestPractice.FirstRun with { OwnerEmail = $"owner{n}@harbour-road.example" });

        var outcomes = await Task.WhenAll(forms.Select(form => Task.Run(() => office.Do((OpenPractice open) => open.For(form)))));

        Assert.Single(outcomes, o => o.Succeeded);
        Assert.All(outcomes.Where(o => !o.Succeeded), o => Assert.Equal("practice-open", o.Refusals.Single().Code));
        Assert.Equal(1, await office.Read(db => db.Users.CountAsync()));
        Assert.Equal(1, await office.Read(db => db.Practices.CountAsync()));
    }

    [Theory]
    [InlineData("short", "password-short")]
    [InlineData("oliveoliveolive1234", "password-plain")]
    [InlineData("passwordpassword123", "password-plain")]
    [InlineData("aaaaaaaaaaaaaaaaaaaa", "password-plain")]
    public async Task A_password_a_stranger_would_try_is_refused_and_nothing_is_kept(string password, string code)
    {
        var office = await fixture.Another(opened: false);

        var refusals = await office.Refuses((OpenPractice open) => open.For(TestPractice.FirstRun with { Password = password }));

        Assert.Contains(refusals, r => r.Code == code && r.Field == "Password");
        Assert.Null(await office.Do((ReadPractice read) => read.Now()));
        Assert.Equal(0, await office.Read(db => db.Users.CountAsync()));
    }

    [Fact]
    public async Task All_faults_of_the_practice_are_named_at_once()
    {
        var office = await fixture.Another(opened: false);
        var form = TestPractice.FirstRun with { Practice = TestPractice.Details with { Zone = "Mars/Base", Currency = "pounds", Name = " " } };

        var refusals = await office.Refuses((OpenPractice open) => open.For(form));

        Assert.Equal(["practice-currency", "practice-name", "practice-zone"], refusals.Select(r => r.Code).Order());
    }
}

public sealed class OpenPracticeOnSqlite(SqliteOffice office) : OpenPracticeTests(office), IClassFixture<SqliteOffice>;

public sealed class OpenPracticeOnPostgreSql(PostgreSqlOffice office) : OpenPracticeTests(office), IClassFixture<PostgreSqlOffice>;
