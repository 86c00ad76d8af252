using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.Access;

public abstract class AccountsTests(OfficeFixture fixture)
{
    [Fact]
    public async Task An_owner_adds_lists_disables_and_enables_accounts()
    {
        var office = await fixture.Another(opened: true);
        var form = new NewAccountForm { DisplayName = "Nina New", Email = "nina@harbour-road.example", Password = TestPractice.Password, Policy = Policy.Coach };
        var id = await office.Must((AddAccount add) => add.For(form, office.Owner));
        var stamp = (await office.Read(db => db.Users.SingleAsync(u => u.Id == id.Value))).SecurityStamp;

        await office.Must((DisableAccount disable) => disable.Now(id, office.Owner));

        var rows = await office.Must((ListAccounts list) => list.Now(office.Owner));
        Assert.Equal(["Carl Coach", "Dora Desk", "Olive Owner", "Nina New"], rows.Select(r => r.DisplayName));
        Assert.Equal(office.Now, rows[^1].DisabledAt);
        Assert.NotEqual(stamp, (await office.Read(db => db.Users.SingleAsync(u => u.Id == id.Value))).SecurityStamp);

        await office.Must((EnableAccount enable) => enable.Now(id, office.Owner));
        Assert.All(await office.Must((ListAccounts list) => list.Now(office.Owner)), r => Assert.Null(r.DisabledAt));
    }

    [Fact]
    public async Task One_mail_address_has_one_account_whatever_its_case()
    {
        var office = await fixture.Another(opened: true);
        var form = new NewAccountForm { DisplayName = "Olive Again", Email = "OLIVE@harbour-road.example", Password = TestPractice.Password, Policy = Policy.Coach };

        var refusals = await office.Refuses((AddAccount add) => add.For(form, office.Owner));

        Assert.Equal(("account-exists", "Email"), (refusals.Single().Code, refusals.Single().Field));
        Assert.Equal(3, await office.Read(db => db.Users.CountAsync()));
    }

    [Fact]
    public async Task Nobody_disables_themselves()
    {
        var office = await fixture.Another(opened: true);

        var refusals = await office.Refuses((DisableAccount disable) => disable.Now(office.Owner.Account!.Value, office.Owner));

        Assert.Equal("account-own", refusals.Single().Code);
    }

    [Fact]
    public async Task The_audit_trail_reads_newest_first_and_names_who()
    {
        var office = await fixture.Another(opened: true);
        office.Time.Advance(TimeSpan.FromHours(1));
        await office.Must((DisableAccount disable) => disable.Now(office.Desk.Account!.Value, office.Owner));

        var page = await office.Must((ListAudit list) => list.Now(1, null, office.Owner));
        var ofDesk = await office.Must((ListAudit list) => list.Now(1, office.Desk.Account!.Value.Value, office.Owner));

        Assert.Equal(("account-disabled", "Olive Owner", false), (page.Entries[0].Action, page.Entries[0].ActorName, page.HasMore));
        Assert.Equal(["account-disabled", "account-added"], ofDesk.Entries.Select(e => e.Action));
    }
}

public sealed class AccountsOnSqlite(SqliteOffice office) : AccountsTests(office), IClassFixture<SqliteOffice>;

public sealed class AccountsOnPostgreSql(PostgreSqlOffice office) : AccountsTests(office), IClassFixture<PostgreSqlOffice>;
