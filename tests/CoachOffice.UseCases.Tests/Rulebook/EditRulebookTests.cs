using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Rulebook;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.UseCases.Tests.Rulebook;

public abstract class EditRulebookTests(OfficeFixture fixture)
{
    private static readonly EntryId Ranges = new(EntryKind.Range, "tempo-ratio");

    [Fact]
    public async Task A_changed_entry_is_the_next_edition_with_its_history_and_its_audit_row()
    {
        var office = await fixture.Another(opened: true);
        var aiming = await Aiming(office, "3.2");
        office.Time.Advance(TimeSpan.FromHours(2));

        var edited = await office.Must((EditRulebook edit) => edit.By(new RulebookForm(1, [new(Ranges, EntryDeed.Write, aiming)], " Beginners swing slower "), office.Coach));

        Assert.Equal(2, edited.Number);
        Assert.Equal([new EntryChange(Ranges, ChangeKind.Changed)], edited.Changes);
        var newest = (await office.Do((ListEditions list) => list.Now()))[0];
        Assert.Equal((2, EditionKind.Edit, "Carl Coach", "Beginners swing slower", true), (newest.Number, newest.Kind, newest.By, newest.Why, newest.IsInForce));
        Assert.Equal(office.Now, newest.AdoptedAt);
        Assert.Equal(edited.Changes, newest.Changes);
        var book = (await office.Must((RulebookPages pages) => pages.Of(null, office.Owner))).Book;
        Assert.Equal(3.2, book.RangeOf(MeasureId.From("tempo-ratio"), Club.Driver)!.Aim!.High);
        var audit = await office.Read(db => db.AuditEntries.SingleAsync(a => a.Subject == "rulebook"));
        Assert.Equal(("rulebook-edit", "Carl Coach", $"edition:2 book:{edited.Sha256[..12]}"), (audit.Action, audit.ActorName, audit.Detail));
    }

    [Fact]
    public async Task A_bad_change_is_told_with_all_its_faults_in_its_own_lines_and_the_old_edition_serves()
    {
        var office = await fixture.Another(opened: true);
        var before = await office.Services.GetRequiredService<Rulebooks>().InForce();

        var refusals = await office.Refuses((EditRulebook edit) => edit.By(
            new RulebookForm(1, [new(Ranges, EntryDeed.Write, "measure: tempo-ratio\ndriver: [3.8, 2.2]\nirons: [2, 3]\n")], "a slip"), office.Owner));

        Assert.Equal(
            [
                "own/ranges/tempo-ratio.yaml:2:9: driver: the low end 3.8 is above the high end 2.2; swap them",
                "own/ranges/tempo-ratio.yaml:3:1: irons: 'irons' is not a name known here; nearest: iron; one of: card, driver, fairway, hybrid, iron, measure, source, wedge",
            ],
            refusals.Select(r => r.Sentence));
        Assert.Same(before, await office.Services.GetRequiredService<Rulebooks>().InForce());
        Assert.Single(await office.Do((ListEditions list) => list.Now()));
    }

    [Fact]
    public async Task A_change_that_breaks_a_worked_case_is_refused_with_the_case_named()
    {
        var office = await fixture.Another(opened: true);
        var text = (await office.Must((OpenEntry open) => open.Of(new EntryId(EntryKind.Pattern, "quick-back"), office.Owner))).InForce!;
        var deaf = text.Replace("tempo-ratio.low at least moderate", "tempo-ratio.low at least marked", StringComparison.Ordinal);
        Assert.NotEqual(text, deaf);

        var refusals = await office.Refuses((EditRulebook edit) => edit.By(new RulebookForm(1, [new(new(EntryKind.Pattern, "quick-back"), EntryDeed.Write, deaf)], "hear less"), office.Owner));

        Assert.All(refusals, r => Assert.StartsWith("cases/quick-back.yaml:", r.Sentence, StringComparison.Ordinal));
        Assert.Contains(refusals, r => r.Sentence.Contains("quick-back does not fire here and should", StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_second_of_two_editors_hears_who_was_first_and_what_changed()
    {
        var office = await fixture.Another(opened: true);
        var aiming = await Aiming(office, "3.2");
        await office.Must((EditRulebook edit) => edit.By(new RulebookForm(1, [new(Ranges, EntryDeed.Write, aiming)], "wider"), office.Owner));

        var refusals = await office.Refuses((EditRulebook edit) => edit.By(new RulebookForm(1, [new(new(EntryKind.Pattern, "quick-back"), EntryDeed.Remove)], "unused"), office.Coach));

        Assert.All(refusals, r => Assert.Equal(Clash.Code, r.Code));
        Assert.Equal("Olive Owner saved edition 2 of the rulebook at 09:00 (\"wider\"), after Carl Coach opened edition 1.", refusals[0].Sentence);
        Assert.Equal("Saved meanwhile: range tempo-ratio changed.", refusals[1].Sentence);
    }

    [Fact]
    public async Task Of_many_editors_at_once_one_wins_and_the_others_are_refused()
    {
        var office = await fixture.Another(opened: true);

        string[] texts = [await Aiming(office, "3.1"), await Aiming(office, "3.2"), await Aiming(office, "3.3")];

        var outcomes = await Task.WhenAll(texts.Select(text => Task.Run(() => office.Do((EditRulebook edit) => edit.By(
            new RulebookForm(1, [new(Ranges, EntryDeed.Write, text)], "all at once"), office.Owner)))));

        Assert.Single(outcomes, o => o.Succeeded);
        Assert.All(outcomes.Where(o => !o.Succeeded), o => Assert.Equal(Clash.Code, o.Refusals[0].Code));
        Assert.Equal(2, (await office.Do((ListEditions list) => list.Now())).Count);
    }

    [Fact]
    public async Task A_removed_pattern_goes_with_its_cases_and_the_desk_may_not_remove_it()
    {
        var office = await fixture.Another(opened: true);
        var form = new RulebookForm(1, [new(new(EntryKind.Pattern, "quick-back"), EntryDeed.Remove)], "we do not teach it");
        var refused = await office.Refuses((EditRulebook edit) => edit.By(form, office.Desk));
        Assert.Equal(NotAllowed.Code, refused.Single().Code);

        var edited = await office.Must((EditRulebook edit) => edit.By(form, office.Owner));

        Assert.All(edited.Changes, c => Assert.True(c.Change == ChangeKind.Removed || c.Id.Kind == EntryKind.Pattern, c.ToString()));
        Assert.Contains(edited.Changes, c => c.Id.Kind == EntryKind.Case);
        var back = await office.Must((EditRulebook edit) => edit.By(new RulebookForm(2, [new(new(EntryKind.Pattern, "quick-back"), EntryDeed.BackToShipped)], "we do"), office.Owner));
        Assert.Equal((await office.Do((ListEditions list) => list.Now()))[2].Sha256, back.Sha256);
    }

    [Fact]
    public async Task Nothing_and_no_reason_are_no_edition()
    {
        var office = await fixture.Another(opened: true);
        var shipped = (await office.Must((OpenEntry open) => open.Of(Ranges, office.Owner))).InForce!;

        var refusals = await office.Refuses((EditRulebook edit) => edit.By(new RulebookForm(1, [], " "), office.Owner));
        var renamed = await office.Refuses((EditRulebook edit) => edit.By(new RulebookForm(1, [new(Ranges, EntryDeed.Write, "measure: lag-angle\ndriver: [null, 102]\n")], "why"), office.Owner));
        var dropped = await office.Refuses((EditRulebook edit) => edit.By(new RulebookForm(1, [new(Ranges, EntryDeed.BackToShipped)], "why"), office.Owner));

        Assert.Equal(["nothing-changed", "why-missing"], refusals.Select(r => r.Code));
        Assert.Equal("entry-renamed", renamed.Single().Code);
        Assert.Equal("nothing-changed", dropped.Single().Code);
        Assert.StartsWith("measure: tempo-ratio\n", shipped, StringComparison.Ordinal);
    }

    /// <summary>The driver's tempo with an aim inside its range, which no worked case looks at.</summary>
    private static async Task<string> Aiming(TestOffice office, string high)
    {
        var text = (await office.Must((OpenEntry open) => open.Of(Ranges, office.Owner))).InForce!;
        var aiming = text.Replace("driver: [2.4, 3.6]", $"driver: {{ range: [2.4, 3.6], aim: [2.8, {high}] }}", StringComparison.Ordinal);
        Assert.NotEqual(text, aiming);
        return aiming;
    }
}

public sealed class EditRulebookOnSqlite(SqliteOffice office) : EditRulebookTests(office), IClassFixture<SqliteOffice>;

public sealed class EditRulebookOnPostgreSql(PostgreSqlOffice office) : EditRulebookTests(office), IClassFixture<PostgreSqlOffice>;
