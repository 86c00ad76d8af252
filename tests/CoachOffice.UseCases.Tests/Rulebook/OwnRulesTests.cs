using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Rulebook;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.UseCases.Tests.Rulebook;

/// <summary>The life of a practice's own changes: going back, files, newer shipped books, two nodes.</summary>
public abstract class OwnRulesTests(OfficeFixture fixture)
{
    private static readonly EntryId QuickBack = new(EntryKind.Pattern, "quick-back");
    private static readonly EntryId Mine = new(EntryKind.Caution, "mind-the-dog");
    private const string Dog = "id: mind-the-dog\nwhen: drill\ntext: The yard has a dog.\n";

    [Fact]
    public async Task Going_back_is_a_new_edition_that_says_what_the_old_one_said()
    {
        var office = await fixture.Another(opened: true);
        await Write(office, 1);
        await office.MustEdit(office.Owner, 2, "unused", new EntryEdit(QuickBack, EntryDeed.Remove));

        var back = await office.Must((GoBackToEdition go) => go.To(2, 3, "it was right", office.Coach));

        var rows = await office.Do((ListEditions list) => list.Now());
        Assert.Equal((4, EditionKind.WentBack, rows[2].Sha256), (back.Number, rows[0].Kind, rows[0].Sha256));
        Assert.Equal("edition-not-found", (await office.Refuses((GoBackToEdition go) => go.To(9, 4, "why", office.Owner))).Single().Code);
        Assert.Equal(Clash.Code, (await office.Refuses((GoBackToEdition go) => go.To(1, 3, "why", office.Owner)))[0].Code);
    }

    [Fact]
    public async Task Two_editions_are_compared_entry_by_entry_and_line_by_line()
    {
        var office = await fixture.Another(opened: true);
        await Write(office, 1);
        await office.MustEdit(office.Owner, 2, "one more", new EntryEdit(Mine, EntryDeed.Write, Dog.Replace("a dog", "two dogs", StringComparison.Ordinal)));

        var differs = Assert.Single(await office.Must((CompareEditions compare) => compare.Between(2, 3)));

        Assert.Equal((new EntryChange(Mine, ChangeKind.Changed), Dog), (differs.Change, differs.Old));
        Assert.Equal(["id: mind-the-dog", "when: drill"], differs.Lines.Where(l => l.Kind == LineKind.Same).Select(l => l.Text));
        Assert.Equal("text: The yard has a dog.", differs.Lines.Single(l => l.Kind == LineKind.Gone).Text);
        Assert.Equal("text: The yard has two dogs.", differs.Lines.Single(l => l.Kind == LineKind.Come).Text);
    }

    [Fact]
    public async Task Own_changes_taken_out_and_brought_in_again_are_the_same_bytes()
    {
        var office = await fixture.Another(opened: true);
        await Write(office, 1);
        var file = await office.Must((ExportOwnRules export) => export.Of(null, office.Owner));
        await office.Must((GoBackToEdition go) => go.To(1, 2, "without", office.Owner));
        Assert.Equal(ExportOwnRules.Nothing, await office.Must((ExportOwnRules export) => export.Of(null, office.Owner)));

        var dry = await office.Must((ImportOwnRules import) => import.From(new OwnRulesForm(file, "", DryRun: true), office.Owner));
        Assert.Equal(3, (await office.Do((ListEditions list) => list.Now())).Count);
        var brought = await office.Must((ImportOwnRules import) => import.From(new OwnRulesForm(file, "from the other laptop"), office.Owner));

        Assert.Equal(dry.Sha256, brought.Sha256);
        Assert.Equal(file, await office.Must((ExportOwnRules export) => export.Of(null, office.Owner)));
        var deeds = await office.Read(db => db.AuditEntries.Where(a => a.Subject == "rulebook").Select(a => a.Action).ToListAsync());
        Assert.Equal(["rulebook-edit", "rulebook-import", "rulebook-went-back"], deeds.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task A_faulty_file_changes_nothing_and_the_desk_brings_none()
    {
        var office = await fixture.Another(opened: true);

        var faults = await office.Refuses((ImportOwnRules import) => import.From(new OwnRulesForm("removed:\n  - drill: no-such\ndrils: []\n", "why"), office.Owner));

        Assert.Equal(2, faults.Count);
        Assert.All(faults, f => Assert.StartsWith("own/changes.yaml:", f.Sentence, StringComparison.Ordinal));
        Assert.Single(await office.Do((ListEditions list) => list.Now()));
        Assert.Equal(NotAllowed.Code, (await office.Refuses((ImportOwnRules import) => import.From(new OwnRulesForm(ExportOwnRules.Nothing, "why"), office.Desk))).Single().Code);
        Assert.Equal(NotAllowed.Code, (await office.Refuses((ExportOwnRules export) => export.Of(null, office.Desk))).Single().Code);
        Assert.Equal(NotAllowed.Code, (await office.Refuses((GoBackToEdition go) => go.To(1, 1, "why", office.Desk))).Single().Code);
    }

    [Fact]
    public async Task Another_node_drafts_by_the_new_edition_at_once_and_a_draft_under_way_keeps_its_own()
    {
        var office = await fixture.Another(opened: true);
        var other = await fixture.SecondNodeOf(office);
        var underWay = await other.Services.GetRequiredService<Rulebooks>().InForce();

        var edited = await Write(office, 1);

        Assert.Equal(edited.Sha256, (await other.Services.GetRequiredService<Rulebooks>().InForce()).Sha256);
        Assert.NotEqual(edited.Sha256, underWay.Sha256);
        Assert.Null(underWay.Book.Cautions.FirstOrDefault(c => c.Id.Value == Mine.Key));
        Assert.Equal(underWay.Sha256, (await other.Services.GetRequiredService<Rulebooks>().For(underWay.Sha256)).Sha256);
    }

    [Fact]
    public async Task A_newer_shipped_book_is_taken_below_the_own_changes()
    {
        using var rules = new RulesCopy();
        var office = await Office(rules);
        await Write(office, 1);
        rules.Rename("A newer house rulebook");
        office.Time.Advance(TimeSpan.FromDays(1));

        Assert.True((await office.Must((AdoptShippedRulebook adopt) => adopt.AtStartUp())).IsNew);

        var book = (await office.Must((RulebookPages pages) => pages.Of(null, office.Owner))).Book;
        Assert.Equal("A newer house rulebook", book.Name);
        Assert.Contains(book.Cautions, c => c.Id.Value == Mine.Key);
        Assert.Null(await office.Do((ReadRulebookNotice notice) => notice.Now()));
    }

    [Fact]
    public async Task A_newer_shipped_book_the_own_changes_do_not_fit_waits_until_they_do()
    {
        using var rules = new RulesCopy();
        rules.Write("more.yaml", "cautions:\n  - { id: old-one, when: drill, text: Old. }\n");
        var office = await Office(rules);
        var old = new EntryId(EntryKind.Caution, "old-one");
        await office.MustEdit(office.Owner, 2, "why", new EntryEdit(old, EntryDeed.Write, "id: old-one\nwhen: drill\ntext: Newer.\n"), new EntryEdit(Mine, EntryDeed.Write, Dog));
        var before = await office.Services.GetRequiredService<Rulebooks>().InForce();
        rules.Write("more.yaml", "# Nothing more.\ncautions: []\n");
        office.Time.Advance(TimeSpan.FromDays(1));

        var faults = await office.Refuses((AdoptShippedRulebook adopt) => adopt.AtStartUp());

        Assert.Contains("caution old-one was removed from the shipped rulebook; keep it as an entry of your own", faults.Single().Sentence, StringComparison.Ordinal);
        Assert.Equal(before.Sha256, (await office.Services.GetRequiredService<Rulebooks>().InForce()).Sha256);
        Assert.True((await office.Do((ReadRulebookNotice notice) => notice.Now()))!.Waits);
        var mended = await office.MustEdit(office.Owner, 3, "gone", new EntryEdit(old, EntryDeed.BackToShipped));
        Assert.Contains(new EntryChange(old, ChangeKind.Removed), mended.Changes);
        Assert.Null(await office.Do((ReadRulebookNotice notice) => notice.Now()));
    }

    private async Task<TestOffice> Office(RulesCopy rules)
    {
        var office = await fixture.Another(opened: true, services => services.AddSingleton(new ShippedRules(rules.Directory)));
        office.Time.Advance(TimeSpan.FromHours(1));
        await office.Must((AdoptShippedRulebook adopt) => adopt.AtStartUp());
        return office;
    }

    private static Task<AdoptedEdition> Write(TestOffice office, int edition) =>
        office.MustEdit(office.Owner, edition, "there is a dog", new EntryEdit(Mine, EntryDeed.Write, Dog));
}

public sealed class OwnRulesOnSqlite(SqliteOffice office) : OwnRulesTests(office), IClassFixture<SqliteOffice>;

public sealed class OwnRulesOnPostgreSql(PostgreSqlOffice office) : OwnRulesTests(office), IClassFixture<PostgreSqlOffice>;
