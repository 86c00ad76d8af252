using System.Security.Cryptography;
using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Access;

public abstract class PrivateLinksTests(OfficeFixture fixture)
{
    private static readonly Duration Month = Duration.FromDays(30);

    [Fact]
    public async Task A_token_opens_its_own_students_plan_and_only_its_hash_is_kept()
    {
        var office = fixture.Office;
        var student = await office.Register(AStudent.Named("Linda", "Holder"));
        var plan = await office.GivePlan(student);

        var token = await Mint(office, plan);

        var pass = await office.Do((PrivateLinks links) => links.Open(token));
        Assert.Equal((student, plan), (pass!.StudentId, pass.PlanId));
        var kept = await office.Read(db => db.PrivateLinks.SingleAsync(l => l.Id == pass.LinkId));
        Assert.Equal(43, token.Length);
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(System.Buffers.Text.Base64Url.DecodeFromChars(token))), kept.TokenSha256);
        Assert.Equal(office.Now, kept.LastOpenedAt);
        Assert.DoesNotContain(await TextSearch.Everywhere(office, token), _ => true);
    }

    [Fact]
    public async Task Two_tokens_of_one_plan_differ_and_both_open_it()
    {
        var office = fixture.Office;
        var plan = await office.GivePlan(await office.Register(AStudent.Named("Two", "Links")));

        var (one, other) = (await Mint(office, plan), await Mint(office, plan));

        Assert.NotEqual(one, other);
        Assert.NotNull(await office.Do((PrivateLinks links) => links.Open(one)));
        Assert.NotNull(await office.Do((PrivateLinks links) => links.Open(other)));
    }

    [Fact]
    public async Task An_expired_link_opens_nothing()
    {
        var office = await fixture.Another(opened: true);
        var token = await Mint(office, await office.GivePlan(await office.Register(AStudent.Named("Ex", "Pired"))));
        var pass = await office.Do((PrivateLinks links) => links.Open(token));

        office.Time.Advance(Month.ToTimeSpan());

        Assert.Null(await office.Do((PrivateLinks links) => links.Open(token)));
        Assert.Null(await office.Do((CheckLink check) => check.StillOpen(pass!.LinkId, office.Now)));
    }

    [Fact]
    public async Task Revoking_ends_all_links_of_one_plan_also_for_a_visitor_already_inside()
    {
        var office = fixture.Office;
        var plan = await office.GivePlan(await office.Register(AStudent.Named("Re", "Voked")));
        var other = await office.GivePlan(await office.Register(AStudent.Named("Still", "Open")));
        var (token, others) = (await Mint(office, plan), await Mint(office, other));
        var pass = await office.Do((PrivateLinks links) => links.Open(token));

        Assert.Equal(1, await office.Must((RevokeLinks revoke) => revoke.Of(plan, office.Desk)));

        Assert.Null(await office.Do((PrivateLinks links) => links.Open(token)));
        Assert.Null(await office.Do((CheckLink check) => check.StillOpen(pass!.LinkId, office.Now)));
        Assert.Equal(other, (await office.Do((PrivateLinks links) => links.Open(others)))!.PlanId);
    }

    [Theory]
    [InlineData(PlanStatus.Draft, false)]
    [InlineData(PlanStatus.Active, true)]
    [InlineData(PlanStatus.OnHold, true)]
    [InlineData(PlanStatus.Completed, true)]
    [InlineData(PlanStatus.Revoked, false)]
    [InlineData(PlanStatus.EnteredInError, false)]
    public async Task A_link_opens_only_a_plan_that_is_in_the_students_hands(PlanStatus status, bool opens)
    {
        var office = fixture.Office;
        var token = await Mint(office, await office.GivePlan(await office.Register(AStudent.Named("State", "Of Plan")), status));

        Assert.Equal(opens, await office.Do((PrivateLinks links) => links.Open(token)) is not null);
    }

    [Fact]
    public async Task A_stop_link_does_not_open_the_plan_and_a_plan_link_does_not_stop()
    {
        var office = fixture.Office;
        var plan = await office.GivePlan(await office.Register(AStudent.Named("Stop", "Link")));
        var (open, stop) = (await Mint(office, plan), await Mint(office, plan, LinkPurpose.StopMessages));

        Assert.Null(await office.Do((PrivateLinks links) => links.Open(stop)));
        Assert.Null(await office.Do((PrivateLinks links) => links.Open(open, LinkPurpose.StopMessages)));
        Assert.NotNull(await office.Do((PrivateLinks links) => links.Open(stop, LinkPurpose.StopMessages)));
    }

    [Fact]
    public async Task An_erased_student_has_no_links()
    {
        var office = fixture.Office;
        var student = await office.Register(AStudent.Named("Era", "Sed"));
        var token = await Mint(office, await office.GivePlan(student));

        await office.Must((EraseStudent erase) => erase.ForGood(student, office.Owner));

        Assert.Null(await office.Do((PrivateLinks links) => links.Open(token)));
    }

    [Theory]
    [InlineData("")]
    [InlineData("x")]
    [InlineData("AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")]
    [InlineData("AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA=")]
    [InlineData("' OR 1=1 --                                ")]
    [InlineData("äääääääääääääääääääääääääääääääääääääääääää")]
    public async Task Anything_else_opens_nothing(string token) =>
        Assert.Null(await fixture.Office.Do((PrivateLinks links) => links.Open(token)));

    // Minting belongs to the caller's transaction, as when a message is rendered.
    private static async Task<string> Mint(TestOffice office, PlanId plan, LinkPurpose purpose = LinkPurpose.Plan)
    {
        await using var scope = office.Services.CreateAsyncScope();
        var token = await scope.ServiceProvider.GetRequiredService<PrivateLinks>().Mint(plan, Month, purpose);
        await scope.ServiceProvider.GetRequiredService<OfficeDb>().SaveChangesAsync();
        return token;
    }
}

public sealed class PrivateLinksOnSqlite(SqliteOffice office) : PrivateLinksTests(office), IClassFixture<SqliteOffice>;

public sealed class PrivateLinksOnPostgreSql(PostgreSqlOffice office) : PrivateLinksTests(office), IClassFixture<PostgreSqlOffice>;
