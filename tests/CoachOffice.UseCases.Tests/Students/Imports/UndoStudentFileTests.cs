using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Groups;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Students.Groups;
using CoachOffice.UseCases.Students.Imports;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.Students.Imports;

/// <summary>A list is taken back as a whole, and nothing anybody did since is lost.</summary>
public abstract class UndoStudentFileTests(OfficeFixture fixture) : IAsyncLifetime
{
    private const string Three = BringingAList.Head + "Anna,Berg,anna@example.org,,,,\nBo,Berg,bo@example.org,,,,\nCy,Berg,cy@example.org,,,,\n";

    private TestOffice _office = null!;
    private BringingAList _desk = null!;

    public async ValueTask InitializeAsync()
    {
        _office = await fixture.Another(opened: true);
        _desk = new BringingAList(_office);
    }

    public ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task Whoever_had_nothing_since_is_gone_and_the_list_may_come_again()
    {
        var file = await _desk.BringsInTold(Three);
        var group = await _office.Must((MakeGroup make) => make.Named(GroupId.From(new SeededIds(3).Next()), "New ones", _office.Desk));
        var bo = await Student("Bo");
        await _office.Must((PutIntoGroup put) => put.The(bo, group, _office.Desk));

        Assert.Equal(new UndoneList(3, 0, 0), await _desk.TakesBack(file));

        Assert.Equal(0, await _office.Read(db => db.Students.CountAsync()));
        Assert.Equal("nothing-to-undo", (await _office.Refuses((UndoStudentFile undo) => undo.Of(file, _office.Desk))).Single().Code);
        await _desk.BringsInTold(Three);
        Assert.Equal(3, await _office.Read(db => db.Students.CountAsync()));
    }

    [Fact]
    public async Task Whoever_has_a_lesson_or_was_changed_since_stays_and_is_named()
    {
        var file = await _desk.BringsInTold(Three);
        await _office.GivePlan(await Student("Anna"));
        var bo = await Student("Bo");
        await _office.Must((ChangeStudent change) => change.To(bo, 1, AStudent.Named("Bo", "Berg") with { Email = "bo@example.org" }, _office.Coach));

        Assert.Equal(new UndoneList(1, 0, 2), await _desk.TakesBack(file));

        var stayed = await _office.Do((FindStudents find) => find.Matching("", 1, archived: false, new StudentsWithin { List = file }));
        Assert.Equal(["Anna Berg", "Bo Berg"], stayed.Rows.Select(r => r.Name));
        Assert.Equal(1, await _office.Read(db => db.Plans.CountAsync()));
        Assert.Equal("removed:1 emptied:0 stayed:2", (await _office.Read(db => db.AuditEntries.SingleAsync(a => a.Action == "students-taken-back"))).Detail);
    }

    [Fact]
    public async Task Filled_fields_are_empty_again_unless_somebody_saved_the_student_since()
    {
        var anna = await _office.Register(AStudent.Named("Anna", "Berg") with { Email = "anna@example.org", Phone = "" });
        var bo = await _office.Register(AStudent.Named("Bo", "Berg") with { Email = "bo@example.org", Phone = "" });
        var file = await _desk.BringsInTold("Given name,Family name,Mail,Phone\nAnna,Berg,anna@example.org,1111 1111\nBo,Berg,bo@example.org,2222 2222\n", f => f with { WhenThere = "fill-empty" });
        await _office.Must((ChangeStudent change) => change.To(bo, 2, AStudent.Named("Bo", "Berg") with { Email = "bo@example.org", Phone = "2222 2222", Notes = "seen" }, _office.Coach));

        Assert.Equal(new UndoneList(0, 1, 1), await _desk.TakesBack(file));

        Assert.Equal(["", "2222 2222"], await _office.Read(db => db.Students.OrderBy(s => s.GivenName).Select(s => s.Phone).ToListAsync()));
        Assert.Equal([anna, bo], await _office.Read(db => db.Students.OrderBy(s => s.GivenName).Select(s => s.Id).ToListAsync()));
    }

    [Fact]
    public async Task Erasing_a_student_leaves_no_word_of_them_in_lists_nor_in_the_texts_that_lie()
    {
        var file = await _desk.Tries(System.Text.Encoding.UTF8.GetBytes(BringingAList.Head + "Zebulon,Berg,zebulon@example.org,,,,\nZebulon,Broken,nowhere,,,,\n"), name: "zebulon.csv");
        await _desk.Says(file.Value.Id, (await _desk.Columns(file.Value.Id)).Form);
        await _desk.BringsIn(file.Value.Id);
        await _desk.Brings(BringingAList.Head + "Zebulon,Again,,,,,\n");
        Assert.NotEmpty(await TextSearch.Everywhere(_office, "zebulon"));

        var zebulon = await Student("Zebulon");
        await _office.Must((EraseStudent erase) => erase.ForGood(zebulon, _office.Owner));

        Assert.Empty(await TextSearch.Everywhere(_office, "zebulon"));
        Assert.Empty(Directory.GetFiles(Path.Combine(_office.Folder, "student-files")));
        Assert.Equal(new UndoneList(0, 0, 0), await _desk.TakesBack(file.Value.Id));
    }

    private Task<StudentId> Student(string given) => _office.Read(db => db.Students.Where(s => s.GivenName == given).Select(s => s.Id).SingleAsync());
}

public sealed class UndoStudentFileOnSqlite(SqliteOffice office) : UndoStudentFileTests(office), IClassFixture<SqliteOffice>;

public sealed class UndoStudentFileOnPostgreSql(PostgreSqlOffice office) : UndoStudentFileTests(office), IClassFixture<PostgreSqlOffice>;
