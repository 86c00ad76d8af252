using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Ledger;

namespace CoachOffice.UseCases.Tests.Access;

public abstract class ChangePracticeTests(OfficeFixture fixture)
{
    [Fact]
    public async Task A_change_is_kept_and_moves_the_practices_day()
    {
        var office = await fixture.Another(opened: true);
        office.Time.SetUtcNow(new DateTimeOffset(2026, 3, 2, 23, 30, 0, TimeSpan.Zero));
        Assert.Equal(new(2026, 3, 2), await office.Do((PracticeClock clock) => clock.Today()));

        var version = await office.Must((ChangePractice change) => change.To(1, TestPractice.Details with { Zone = "Europe/Berlin" }, office.Owner));

        Assert.Equal(2, version);
        Assert.Equal(new(2026, 3, 3), await office.Do((PracticeClock clock) => clock.Today()));
    }

    [Fact]
    public async Task A_second_editor_sees_both_values()
    {
        var office = await fixture.Another(opened: true);
        await office.Must((ChangePractice change) => change.To(1, TestPractice.Details with { Name = "First Name" }, office.Owner));

        var refusals = await office.Refuses((ChangePractice change) => change.To(1, TestPractice.Details with { Name = "Second Name" }, office.Owner));

        Assert.All(refusals, r => Assert.Equal(Clash.Code, r.Code));
        Assert.Contains("Olive Owner", refusals[0].Sentence, StringComparison.Ordinal);
        Assert.Equal("Name: saved is 'First Name', yours is 'Second Name'.", refusals[1].Sentence);
    }

    [Fact]
    public async Task The_currency_stays_once_there_are_prices_or_entries()
    {
        var office = await fixture.Another(opened: true);
        await office.Must((ChangePractice change) => change.To(1, TestPractice.Details with { Currency = "JPY" }, office.Owner));
        var till = Till.Without(office);
        await till.Pay(await till.Payer(await till.Student("Una")), "10");

        var refusals = await office.Refuses((ChangePractice change) => change.To(2, TestPractice.Details with { Currency = "GBP" }, office.Owner));

        Assert.Equal(("practice-currency-kept", "Currency"), (refusals.Single().Code, refusals.Single().Field));
        await office.Must((ChangePractice change) => change.To(2, TestPractice.Details with { Currency = "JPY", Name = "Another name" }, office.Owner));
    }
}

public sealed class ChangePracticeOnSqlite(SqliteOffice office) : ChangePracticeTests(office), IClassFixture<SqliteOffice>;

public sealed class ChangePracticeOnPostgreSql(PostgreSqlOffice office) : ChangePracticeTests(office), IClassFixture<PostgreSqlOffice>;
