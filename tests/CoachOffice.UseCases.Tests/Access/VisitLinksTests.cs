using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.UseCases.Tests.Access;

public abstract class VisitLinksTests(OfficeFixture fixture)
{
    [Fact]
    public async Task A_link_to_the_lessons_opens_its_own_student_and_no_plan()
    {
        var office = fixture.Office;
        var student = await office.Register(AStudent.Named("Linda", "Lessons"));
        var plan = await office.GivePlan(student);

        var token = await Hand(office, student);

        var pass = await office.Do((PrivateLinks links) => links.OpenVisits(token));
        Assert.Equal(student, pass!.StudentId);
        var kept = await office.Read(db => db.PrivateLinks.SingleAsync(l => l.Id == pass.LinkId));
        Assert.Equal((null, office.Now), (kept.PlanId, kept.LastOpenedAt!.Value));
        Assert.Null(await office.Do((PrivateLinks links) => links.Open(token)));
        Assert.Null(await office.Do((PrivateLinks links) => links.Open(token, LinkPurpose.StopMessages)));
        Assert.Null(await office.Do((PrivateLinks links) => links.Open(token, LinkPurpose.Visits)));
        Assert.Null(await office.Do((CheckLink check) => check.StillOpen(pass.LinkId, office.Now)));
        Assert.DoesNotContain(await TextSearch.Everywhere(office, token), _ => true);
        Assert.NotNull(await office.Read(db => db.Plans.SingleOrDefaultAsync(p => p.Id == plan)));
    }

    [Fact]
    public async Task A_link_of_a_plan_does_not_open_the_lessons()
    {
        var office = fixture.Office;
        var plan = await office.GivePlan(await office.Register(AStudent.Named("Plan", "Only")));
        await using var scope = office.Services.CreateAsyncScope();
        var links = scope.ServiceProvider.GetRequiredService<PrivateLinks>();
        var token = await links.Mint(plan, IssueVisitLink.Life);
        await scope.ServiceProvider.GetRequiredService<OfficeDb>().SaveChangesAsync();

        Assert.Null(await links.OpenVisits(token));
        await Assert.ThrowsAsync<ArgumentException>(() => links.Mint(plan, IssueVisitLink.Life, LinkPurpose.Visits));
    }

    [Fact]
    public async Task An_expired_link_opens_nothing()
    {
        var office = await fixture.Another(opened: true);
        var token = await Hand(office, await office.Register(AStudent.Named("Ex", "Pired")));
        var pass = await office.Do((PrivateLinks links) => links.OpenVisits(token));

        office.Time.Advance(IssueVisitLink.Life.ToTimeSpan());

        Assert.Null(await office.Do((PrivateLinks links) => links.OpenVisits(token)));
        Assert.Null(await office.Do((CheckLink check) => check.StillOpensVisits(pass!.LinkId, office.Now)));
    }

    [Fact]
    public async Task Revoking_ends_all_links_to_the_lessons_also_for_a_visitor_already_inside_and_leaves_plans_alone()
    {
        var office = fixture.Office;
        var (student, other) = (await office.Register(AStudent.Named("Re", "Voked")), await office.Register(AStudent.Named("Still", "Open")));
        var (one, two, others) = (await Hand(office, student), await Hand(office, student), await Hand(office, other));
        var pass = await office.Do((PrivateLinks links) => links.OpenVisits(one));

        Assert.Equal(2, await office.Must((RevokeVisitLinks revoke) => revoke.Of(student, office.Desk)));

        Assert.Null(await office.Do((PrivateLinks links) => links.OpenVisits(one)));
        Assert.Null(await office.Do((PrivateLinks links) => links.OpenVisits(two)));
        Assert.Null(await office.Do((CheckLink check) => check.StillOpensVisits(pass!.LinkId, office.Now)));
        Assert.Equal(other, (await office.Do((PrivateLinks links) => links.OpenVisits(others)))!.StudentId);
        Assert.Contains(await office.Read(db => db.AuditEntries.Select(a => a.Action).ToListAsync()), a => a == "visit-links-revoked");
    }

    [Fact]
    public async Task An_erased_student_has_no_link_and_gets_none()
    {
        var office = fixture.Office;
        var student = await office.Register(AStudent.Named("Era", "Sed"));
        var token = await Hand(office, student);

        await office.Must((EraseStudent erase) => erase.ForGood(student, office.Owner));

        Assert.Null(await office.Do((PrivateLinks links) => links.OpenVisits(token)));
        Assert.Equal("student-not-found", (await office.Refuses((IssueVisitLink issue) => issue.For(student, office.Desk))).Single().Code);
    }

    [Theory]
    [InlineData("")]
    [InlineData("AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")]
    public async Task Anything_else_opens_nothing(string token) =>
        Assert.Null(await fixture.Office.Do((PrivateLinks links) => links.OpenVisits(token)));

    private static async Task<string> Hand(TestOffice office, StudentId student)
    {
        var address = await office.Must((IssueVisitLink issue) => issue.For(student, office.Desk));
        Assert.StartsWith("/v/", address.AbsolutePath, StringComparison.Ordinal);
        return address.AbsolutePath["/v/".Length..];
    }
}

public sealed class VisitLinksOnSqlite(SqliteOffice office) : VisitLinksTests(office), IClassFixture<SqliteOffice>;

public sealed class VisitLinksOnPostgreSql(PostgreSqlOffice office) : VisitLinksTests(office), IClassFixture<PostgreSqlOffice>;
