using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Rulebook;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.UseCases.Tests.Rulebook;

public abstract class AdoptShippedRulebookTests(OfficeFixture fixture)
{
    // Before the practice is opened there is no account yet.
    private static readonly Actor Reader = new(null, "a reader", Policy.Desk);

    [Fact]
    public async Task The_first_start_keeps_the_shipped_book_and_takes_it_into_force()
    {
        var office = await fixture.Another(opened: false);

        var adopted = await office.Must((AdoptShippedRulebook adopt) => adopt.AtStartUp());

        Assert.True(adopted.IsNew);
        var view = await office.Must((RulebookPages pages) => pages.Of(null, Reader));
        Assert.Equal((adopted.Sha256, true, office.Now), (view.Sha256, view.IsInForce, view.AdoptedAt));
        Assert.NotEmpty(view.Book.Patterns);
        var compiled = await office.Services.GetRequiredService<Rulebooks>().InForce();
        Assert.Equal(adopted.Sha256, compiled.Sha256);
    }

    [Fact]
    public async Task The_second_start_changes_nothing()
    {
        var office = await fixture.Another(opened: false);
        var first = await office.Must((AdoptShippedRulebook adopt) => adopt.AtStartUp());
        office.Time.Advance(TimeSpan.FromDays(1));

        var second = await office.Must((AdoptShippedRulebook adopt) => adopt.AtStartUp());

        Assert.Equal(first with { IsNew = false }, second);
    }

    [Fact]
    public async Task Nodes_that_start_together_adopt_one_book()
    {
        var office = await fixture.Another(opened: false);

        var adopted = await Task.WhenAll(Enumerable.Range(1, 4).Select(_ => Task.Run(() => office.Must((AdoptShippedRulebook adopt) => adopt.AtStartUp()))));

        Assert.Single(adopted.Select(a => a.Sha256).Distinct());
        Assert.Equal(1, await office.Read(db => db.KeptRulebooks.CountAsync()));
        Assert.Equal(adopted[0].Sha256, (await office.Read(db => db.BooksInForce.SingleAsync())).Sha256);
    }

    [Fact]
    public async Task A_changed_book_is_adopted_and_the_old_one_stays_readable()
    {
        using var rules = new RulesCopy();
        var office = await fixture.Another(opened: false, services => services.AddSingleton(new ShippedRules(rules.Directory)));
        var first = await office.Must((AdoptShippedRulebook adopt) => adopt.AtStartUp());
        rules.Rename("Another house rulebook");

        var second = await office.Must((AdoptShippedRulebook adopt) => adopt.AtStartUp());

        Assert.True(second.IsNew);
        Assert.NotEqual(first.Sha256, second.Sha256);
        var old = await office.Must((RulebookPages pages) => pages.Of(first.Sha256, Reader));
        Assert.False(old.IsInForce);
        Assert.False(old.IsInForce);
        Assert.Equal("Another house rulebook", (await office.Must((RulebookPages pages) => pages.Of(null, Reader))).Book.Name);
    }

    [Fact]
    public async Task A_faulty_book_is_refused_with_its_places_and_the_old_one_stays_in_force()
    {
        using var rules = new RulesCopy();
        var office = await fixture.Another(opened: false, services => services.AddSingleton(new ShippedRules(rules.Directory)));
        var first = await office.Must((AdoptShippedRulebook adopt) => adopt.AtStartUp());
        rules.Write("broken.yaml", "patterns:\n  - id: half\nmeasurs: []\n");

        var refusals = await office.Refuses((AdoptShippedRulebook adopt) => adopt.AtStartUp());

        Assert.True(refusals.Count >= 2);
        Assert.All(refusals, r => Assert.StartsWith("broken.yaml:", r.Sentence, StringComparison.Ordinal));
        Assert.Equal(first.Sha256, (await office.Must((RulebookPages pages) => pages.Of(null, Reader))).Sha256);
    }

    [Fact]
    public async Task An_unknown_book_is_not_found()
    {
        var office = await fixture.Another(opened: false);
        await office.Must((AdoptShippedRulebook adopt) => adopt.AtStartUp());

        var refusals = await office.Refuses((RulebookPages pages) => pages.Of(new string('0', 64), Reader));

        Assert.Equal("rulebook-not-found", refusals.Single().Code);
    }
}

public sealed class AdoptShippedRulebookOnSqlite(SqliteOffice office) : AdoptShippedRulebookTests(office), IClassFixture<SqliteOffice>;

public sealed class AdoptShippedRulebookOnPostgreSql(PostgreSqlOffice office) : AdoptShippedRulebookTests(office), IClassFixture<PostgreSqlOffice>;
