using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Rulebook;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.Rulebook;

public abstract class PutInForceTests(OfficeFixture fixture)
{
    private static readonly EntryId Tempo = new(EntryKind.Range, "tempo-ratio");
    private static readonly EntryId Drill = new(EntryKind.Drill, "shadow-head");

    [Fact]
    public async Task What_was_gathered_comes_into_force_together_and_nothing_waits_any_more()
    {
        var office = await fixture.Another(opened: true);
        await Keeps(office, Tempo, "driver: [2.4, 3.6]", "driver: { range: [2.4, 3.6], aim: [2.8, 3.2] }");
        var kept = await Keeps(office, Drill, "id: shadow-head", "id: shadow-head", alsoCue: true);
        Assert.Equal(2, kept.Waiting);
        Assert.Single(await office.Do((ListEditions list) => list.Now()));

        var edition = await office.Must((PutInForce put) => put.By("Two small things", office.Coach));

        Assert.Equal((2, 2), (edition.Number, edition.Changes.Count));
        Assert.Empty((await office.Must((ReadWork read) => read.Of(office.Coach))).Rows);
        var view = await office.Must((RulebookPages pages) => pages.Of(null, office.Coach));
        Assert.Equal((2, 0), (view.Edition, view.Waiting));
        Assert.Equal("watch your own shadow", view.Book.Find(DrillId.From("shadow-head"))!.Cue);
        var again = await office.Refuses((PutInForce put) => put.By("Two small things", office.Coach));
        Assert.Equal("nothing-changed", again.Single().Code);
    }

    [Fact]
    public async Task An_unchanged_entry_waits_for_nothing_and_a_change_undone_leaves_the_working_copy()
    {
        var office = await fixture.Another(opened: true);
        var text = await Text(office, Tempo);

        var same = await office.Must((KeepChange keep) => keep.Of(new WorkForm(1, [new(Tempo, EntryDeed.Write, text)]), office.Coach));
        Assert.Equal((true, false, 0), (same.IsKept, same.IsNews, same.Waiting));
        await Keeps(office, Tempo, "driver: [2.4, 3.6]", "driver: [2.4, 3.5]", unfinished: true);
        var undone = await office.Must((KeepChange keep) => keep.Of(new WorkForm(1, [new(Tempo, EntryDeed.Write, text)]), office.Coach));

        Assert.Equal((true, false, 0), (undone.IsKept, undone.IsNews, undone.Waiting));
    }

    [Fact]
    public async Task A_faulty_entry_is_kept_only_as_unfinished_and_then_nothing_comes_into_force()
    {
        var office = await fixture.Another(opened: true);
        EntryEdit edit = new(Tempo, EntryDeed.Write, "measure: tempo-ratio\ndriver: [3.8, 2.2]\nirons: [2, 3]\n");

        var refused = await office.Must((KeepChange keep) => keep.Of(new WorkForm(1, [edit]), office.Coach));
        Assert.Equal((false, 2, 0), (refused.IsKept, refused.Check.In(Tempo).Count(), refused.Waiting));
        Assert.Equal([2, 3], refused.Check.In(Tempo).Select(f => f.Fault.Line));
        var kept = await office.Must((KeepChange keep) => keep.Of(new WorkForm(1, [edit]) { Unfinished = true }, office.Coach));
        Assert.Equal((true, 1), (kept.IsKept, kept.Waiting));

        var refusals = await office.Refuses((PutInForce put) => put.By("a slip", office.Coach));

        Assert.Equal(2, refusals.Count);
        Assert.Equal(edit.Text, (await office.Must((ReadWork read) => read.Of(office.Coach))).Rows.Single().Edit.Text);
    }

    [Fact]
    public async Task The_second_of_two_editors_is_refused_takes_the_new_edition_and_sees_where_both_changed_the_same()
    {
        var office = await fixture.Another(opened: true);
        await Keeps(office, Tempo, "driver: [2.4, 3.6]", "driver: { range: [2.4, 3.6], aim: [2.8, 3.2] }");
        var theirs = (await Text(office, Tempo)).Replace("driver: [2.4, 3.6]", "driver: { range: [2.4, 3.6], aim: [2.9, 3.1] }", StringComparison.Ordinal);
        await office.MustEdit(office.Owner, 1, "narrower", new EntryEdit(Tempo, EntryDeed.Write, theirs));

        var refusals = await office.Refuses((PutInForce put) => put.By("wider", office.Coach));
        Assert.All(refusals, r => Assert.Equal(Clash.Code, r.Code));
        Assert.Contains("Olive Owner", refusals[0].Sentence, StringComparison.Ordinal);
        Assert.Contains("Carl Coach", refusals[0].Sentence, StringComparison.Ordinal);
        var seen = await office.Must((ReadWork read) => read.Of(office.Coach));
        Assert.True(Assert.Single(seen.Rows).Clashes);
        Assert.Equal(2, Assert.Single(seen.Later).Number);

        await office.Must((TakeNewBase take) => take.By(office.Coach));
        var edition = await office.Must((PutInForce put) => put.By("wider after all", office.Coach));

        Assert.Equal(3, edition.Number);
        Assert.Equal(3.2, (await office.Must((RulebookPages pages) => pages.Of(null, office.Coach))).Book.RangeOf(MeasureId.From("tempo-ratio"), Club.Driver)!.Aim!.High);
    }

    [Fact]
    public async Task A_dropped_change_can_be_taken_back()
    {
        var office = await fixture.Another(opened: true);
        await Keeps(office, Tempo, "driver: [2.4, 3.6]", "driver: { range: [2.4, 3.6], aim: [2.8, 3.2] }");

        Assert.Equal(0, await office.Must((DropChange drop) => drop.Of(Tempo, office.Coach)));
        Assert.True((await office.Must((ReadWork read) => read.Of(office.Coach))).CanTakeBack);
        Assert.Equal(1, await office.Must((TakeBackDrop back) => back.By(office.Coach)));
    }

    [Fact]
    public async Task The_desk_gathers_nothing_and_everyone_sees_only_their_own()
    {
        var office = await fixture.Another(opened: true);
        await Keeps(office, Tempo, "driver: [2.4, 3.6]", "driver: { range: [2.4, 3.6], aim: [2.8, 3.2] }");

        var refused = await office.Refuses((KeepChange keep) => keep.Of(new WorkForm(1, [new(Tempo, EntryDeed.Remove)]), office.Desk));

        Assert.Equal(NotAllowed.Code, refused.Single().Code);
        Assert.Empty((await office.Must((ReadWork read) => read.Of(office.Owner))).Rows);
        Assert.Equal(1, await office.Read(db => db.RulebookWorks.CountAsync()));
    }

    private static async Task<string> Text(TestOffice office, EntryId id) => (await office.Must((OpenEntry open) => open.Of(id, office.Coach))).InForce!;

    private static async Task<KeptChange> Keeps(TestOffice office, EntryId id, string old, string now, bool alsoCue = false, bool unfinished = false)
    {
        var text = await Text(office, id);
        var changed = text.Replace(old, now, StringComparison.Ordinal);
        if (alsoCue) changed = string.Join('\n', changed.Split('\n').Select(line => line.StartsWith("cue:", StringComparison.Ordinal) ? "cue: watch your own shadow" : line));
        Assert.NotEqual(text, changed);
        return await office.Must((KeepChange keep) => keep.Of(new WorkForm(1, [new(id, EntryDeed.Write, changed)]) { Unfinished = unfinished }, office.Coach));
    }
}

public sealed class PutInForceOnSqlite(SqliteOffice office) : PutInForceTests(office), IClassFixture<SqliteOffice>;

public sealed class PutInForceOnPostgreSql(PostgreSqlOffice office) : PutInForceTests(office), IClassFixture<PostgreSqlOffice>;
