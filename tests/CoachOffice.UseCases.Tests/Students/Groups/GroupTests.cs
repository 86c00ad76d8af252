using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Groups;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Students.Groups;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.Students.Groups;

public abstract class GroupTests(OfficeFixture fixture) : IAsyncLifetime
{
    private TestOffice _office = null!;

    public async ValueTask InitializeAsync() => _office = await fixture.Another(opened: true);

    public ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task Members_come_and_go_and_a_student_may_be_in_several()
    {
        var (ida, bo) = (await _office.Register(AStudent.Named("Ida", "Zander")), await _office.Register(AStudent.Junior("Bo", "Abel")));
        var (juniors, squad) = (await Makes("Juniors"), await Makes("  Squad  "));
        await Puts(ida, juniors);
        await Puts(bo, juniors);
        await Puts(bo, juniors);
        await Puts(bo, squad);

        var page = await _office.Must((GroupPage p) => p.Of(juniors));
        Assert.Equal(["Bo Abel", "Ida Zander"], page.Members.Select(m => m.Name));
        Assert.Equal(["Juniors:2", "Squad:1"], (await List()).Select(g => $"{g.Name}:{g.Members}"));
        Assert.Equal(["Juniors", "Squad"], (await _office.Do((ListGroups l) => l.Of(bo))).Select(g => g.Name));

        await _office.Must((TakeFromGroup take) => take.The(bo, juniors, _office.Desk));
        await _office.Must((TakeFromGroup take) => take.The(bo, juniors, _office.Desk));
        Assert.Equal(ida, (await _office.Must((GroupPage p) => p.Of(juniors))).Members.Single().Id);
        Assert.Equal(1, await _office.Read(db => db.AuditEntries.CountAsync(a => a.Action == "group-left")));
    }

    [Fact]
    public async Task The_list_of_students_is_narrowed_down_to_a_group_in_one_query_with_the_search()
    {
        var (ida, bo) = (await _office.Register(AStudent.Named("Ida", "Zander")), await _office.Register(AStudent.Named("Bo", "Zander")));
        await _office.Register(AStudent.Named("Cy", "Zander"));
        var group = await Makes("Tuesday");
        await Puts(ida, group);
        await Puts(bo, group);
        await _office.Must((ArchiveStudent archive) => archive.Now(bo, _office.Desk));

        var all = await _office.Do((FindStudents find) => find.Matching("", 1, archived: false, new StudentsWithin { Group = group }));
        var away = await _office.Do((FindStudents find) => find.Matching("zander", 1, archived: true, new StudentsWithin { Group = group }));

        Assert.Equal((ida, 1), (all.Rows.Single().Id, all.Total));
        Assert.Equal(bo, away.Rows.Single().Id);
        Assert.Equal(1, (await List()).Single().Members);
    }

    [Fact]
    public async Task An_archived_group_keeps_its_members_and_takes_nobody_until_it_is_back()
    {
        var ida = await _office.Register(AStudent.Named("Ida", "Zander"));
        var bo = await _office.Register(AStudent.Named("Bo", "Zander"));
        var group = await Makes("Old ones");
        await Puts(ida, group);
        await _office.Must((ArchiveGroup archive) => archive.Now(group, _office.Coach));

        Assert.Empty(await List());
        Assert.Empty(await _office.Do((ListGroups l) => l.Of(ida)));
        Assert.Equal("group-archived", (await _office.Refuses((PutIntoGroup put) => put.The(bo, group, _office.Coach))).Single().Code);
        Assert.Equal("Old ones", (await _office.Do((ListGroups l) => l.Now(archived: true))).Single().Name);

        await _office.Must((RestoreGroup restore) => restore.Now(group, _office.Coach));
        await _office.Must((RenameGroup rename) => rename.To(group, "New ones", _office.Coach));
        Assert.Equal(["New ones:1"], (await List()).Select(g => $"{g.Name}:{g.Members}"));
    }

    [Theory]
    [InlineData("", "group-name")]
    [InlineData(" \u200b ", "group-name")]
    [InlineData("two\nlines", "group-name-line")]
    [InlineData("half", "group-name-line")]
    [InlineData("long", "group-name-long")]
    public async Task A_name_that_cannot_stand_in_a_list_is_refused(string name, string code)
    {
        var typed = name switch { "long" => new string('g', 81), "half" => "half a smile \ud83d", _ => name };
        var group = await Makes("Kept");

        var made = await _office.Refuses((MakeGroup make) => make.Named(GroupId.From(Guid.Empty), typed, _office.Owner));
        var renamed = await _office.Refuses((RenameGroup rename) => rename.To(group, typed, _office.Owner));

        Assert.Equal([code, code], [made.Single().Code, renamed.Single().Code]);
        Assert.Equal("Kept", (await List()).Single().Name);
    }

    [Fact]
    public async Task A_form_posted_twice_makes_one_group_and_who_may_not_makes_none()
    {
        var id = GroupId.From(new SeededIds(7).Next());
        await Task.WhenAll(Enumerable.Range(0, 2).Select(_ => Task.Run(() => _office.Must((MakeGroup make) => make.Named(id, "Once", _office.Desk)))));
        var refused = await _office.Refuses((MakeGroup make) => make.Named(GroupId.From(new SeededIds(8).Next()), "Never", Domain.Access.Actor.Student));

        Assert.Equal(NotAllowed.Code, refused.Single().Code);
        Assert.Equal("Once", (await List()).Single().Name);
        Assert.Equal(1, await _office.Read(db => db.AuditEntries.CountAsync(a => a.Action == "group-made")));
    }

    [Fact]
    public async Task Erasing_a_student_takes_them_out_of_every_group()
    {
        var ida = await _office.Register(AStudent.Named("Ida", "Zander"));
        var group = await Makes("Juniors");
        await Puts(ida, group);

        await _office.Must((EraseStudent erase) => erase.ForGood(ida, _office.Owner));

        Assert.Empty((await _office.Must((GroupPage p) => p.Of(group))).Members);
        Assert.Equal("student-not-found", (await _office.Refuses((PutIntoGroup put) => put.The(ida, group, _office.Owner))).Single().Code);
    }

    private Task<GroupId> Makes(string name) => _office.Must((MakeGroup make) => make.Named(GroupId.From(new SeededIds(name.Length).Next()), name, _office.Owner));

    private Task<GroupId> Puts(StudentId student, GroupId group) => _office.Must((PutIntoGroup put) => put.The(student, group, _office.Desk));

    private Task<IReadOnlyList<GroupRow>> List() => _office.Do((ListGroups list) => list.Now(archived: false));
}

public sealed class GroupsOnSqlite(SqliteOffice office) : GroupTests(office), IClassFixture<SqliteOffice>;

public sealed class GroupsOnPostgreSql(PostgreSqlOffice office) : GroupTests(office), IClassFixture<PostgreSqlOffice>;
