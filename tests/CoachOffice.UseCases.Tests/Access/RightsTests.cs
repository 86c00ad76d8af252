using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.Access;

/// <summary>Who may do what: each operation once as each policy, as the clock and as a student behind a link.</summary>
public abstract class RightsTests(OfficeFixture fixture)
{
    private const string Nobody = "";

    [Theory]
    [InlineData("change-practice", "owner")]
    [InlineData("add-account", "owner")]
    [InlineData("list-accounts", "owner")]
    [InlineData("disable-account", "owner")]
    [InlineData("list-audit", "owner")]
    [InlineData("erase-student", "owner")]
    [InlineData("register-student", "owner coach desk")]
    [InlineData("change-student", "owner coach desk")]
    [InlineData("archive-student", "owner coach desk")]
    [InlineData("restore-student", "owner coach desk")]
    [InlineData("revoke-links", "owner coach desk")]
    public async Task Only_these_may(string operation, string allowed)
    {
        var office = await fixture.Another(opened: true);
        var student = await office.Register(AStudent.Named("Right", "Holder"));
        var actors = new[] { ("owner", office.Owner), ("coach", office.Coach), ("desk", office.Desk), ("clock", Actor.Clock), ("student", Actor.Student) };

        // Those who may not go first: after them everything must be as before.
        foreach (var (name, actor) in actors.OrderBy(a => allowed.Contains(a.Item1, StringComparison.Ordinal)))
        {
            var audits = await office.Read(db => db.AuditEntries.CountAsync());
            var codes = await Try(office, operation, student, actor);
            if (allowed.Contains(name, StringComparison.Ordinal))
            {
                Assert.DoesNotContain(NotAllowed.Code, codes);
                continue;
            }

            Assert.Equal([NotAllowed.Code], codes);
            Assert.Equal(audits, await office.Read(db => db.AuditEntries.CountAsync()));
        }
    }

    private static async Task<IReadOnlyList<string>> Try(TestOffice office, string operation, StudentId student, Actor actor) => operation switch
    {
        "change-practice" => Codes(await office.Do((ChangePractice c) => c.To(1, TestPractice.Details, actor))),
        "add-account" => Codes(await office.Do((AddAccount a) => a.For(NewAccount, actor))),
        "list-accounts" => Codes(await office.Do((ListAccounts l) => l.Now(actor))),
        "disable-account" => Codes(await office.Do((DisableAccount d) => d.Now(office.Desk.Account!.Value, actor))),
        "list-audit" => Codes(await office.Do((ListAudit l) => l.Now(1, null, actor))),
        "erase-student" => Codes(await office.Do((EraseStudent e) => e.ForGood(student, actor))),
        "register-student" => Codes(await office.Do((RegisterStudent r) => r.From(AStudent.Named("A", "B"), actor))),
        "change-student" => Codes(await office.Do((ChangeStudent c) => c.To(student, 1, AStudent.Named("A", "B"), actor))),
        "archive-student" => Codes(await office.Do((ArchiveStudent a) => a.Now(student, actor))),
        "restore-student" => Codes(await office.Do((RestoreStudent r) => r.Now(student, actor))),
        "revoke-links" => Codes(await office.Do((RevokeLinks r) => r.Of(Domain.Plans.PlanId.From(student.Value), actor))),
        _ => throw new ArgumentOutOfRangeException(nameof(operation), operation, Nobody),
    };

    private static NewAccountForm NewAccount { get; } =
        new() { DisplayName = "New Person", Email = "new@harbour-road.example", Password = TestPractice.Password, Policy = Policy.Coach };

    private static IReadOnlyList<string> Codes<T>(Outcome<T> outcome) => [.. outcome.Refusals.Select(r => r.Code)];
}

public sealed class RightsOnSqlite(SqliteOffice office) : RightsTests(office), IClassFixture<SqliteOffice>;

public sealed class RightsOnPostgreSql(PostgreSqlOffice office) : RightsTests(office), IClassFixture<PostgreSqlOffice>;
