using System.Text;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Students.Imports;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Students.Imports;

/// <summary>What a list brings, and what it does not.</summary>
public abstract class StudentListTests(OfficeFixture fixture) : IAsyncLifetime
{
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
    public async Task Every_row_is_shown_before_anything_is_kept_and_then_all_of_it_is()
    {
        var file = await _desk.BringsTold(BringingAList.Head + """
            Anna,Berg,anna@example.org,+44 1632 960 001,1984-05-17,,
            Tim,Young,,,2015-02-03,Mara Young,mara@example.org
            Eve,Alone,,,2014-02-03,,
            Bad,Mail,nowhere,,,,
            ,Nobody,no@example.org,,,,

            """);

        Assert.Equal(
            ["2 new", "3 new", "4 refused: A student under 18 needs a guardian: give the guardian's name and mail address, messages go there.", "5 refused: 'nowhere' is no mail address; write it like name@example.org.", "6 refused: Give the student a name."],
            await _desk.Rows(file));
        Assert.Equal(0, await _office.Read(db => db.Students.CountAsync()));

        await _desk.BringsIn(file);

        var students = await _office.Read(db => db.Students.OrderBy(s => s.SearchText).ToListAsync());
        Assert.Equal(["Anna Berg", "Tim Young"], students.Select(s => s.FullName));
        Assert.Equal((new LocalDate(1984, 5, 17), "+44 1632 960 001", 1), (students[0].BirthDate, students[0].Phone, students[0].Version));
        Assert.Equal("mara@example.org", students[1].RecipientOn(new LocalDate(2026, 3, 2))!.Address);
        var row = Assert.Single(await _office.Must((ListStudentFiles list) => list.Now(_office.Desk)));
        Assert.Equal((2, 0, 0, 3), (row.Outcome!.Added, row.Outcome.Filled, row.Outcome.Known, row.Outcome.Refused));
        Assert.Equal("added:2 filled:0 known:0 refused:3", (await _office.Read(db => db.AuditEntries.SingleAsync(a => a.Action == "students-brought"))).Detail);
    }

    [Fact]
    public async Task A_list_sent_twice_counts_once_and_the_same_list_brought_again_adds_nobody()
    {
        const string Text = BringingAList.Head + "Anna,Berg,anna@example.org,,,,\n";
        var file = await _desk.BringsTold(Text);
        await Task.WhenAll(Enumerable.Range(0, 3).Select(_ => Task.Run(() => _office.Do((BringStudents bring) => bring.Of(file, _office.Desk)))));
        await _desk.BringsIn(file);

        var again = await _desk.Brings(Text);
        Assert.NotNull(again.Columns);
        Assert.Equal("file-known", (await _office.Refuses((BringStudents bring) => bring.Of(again.Id, _office.Desk))).Single().Code);
        Assert.Equal(1, await _office.Read(db => db.Students.CountAsync()));
    }

    [Fact]
    public async Task Who_is_there_is_known_by_name_with_birth_date_mail_or_phone_and_skipped()
    {
        await _office.Register(AStudent.Named("Žofie", "Dvořáková") with { Email = "zofie@example.org", Phone = "+420 601 234 567", BirthDate = new LocalDate(1990, 1, 2) });
        var file = await _desk.BringsTold(BringingAList.Head + """
            Zofie,DVORAKOVA,other@example.org,,1990-01-02,,
            Žofie,Dvořáková,ZOFIE@example.org,,,,
            Žofie,Dvořáková,,601 234 567,,,
            Žofie,Dvořáková,,,,,
            Žofie,Dvořáková,zofie@example.org,,2001-01-01,,
            Karel,Dvořák,zofie@example.org,,,,
            Karel,Dvořák,zofie@example.org,,,,
            Žofie,Dvořáková,quite@example.org,,,,

            """);

        Assert.Equal(
            [
                "2 known: There already: same name and birth date.", "3 known: There already: same name and mail address.", "4 known: There already: same name and phone.",
                "5 known: There already: same name, and the row says nothing else to tell them apart by.", "6 new: Another Žofie Dvořáková is there.",
                "7 new: Shares the mail address of Žofie Dvořáková.", "8 known: Stands in line 7 already: same name and mail address.", "9 new: Another Žofie Dvořáková is there.",
            ],
            await _desk.Rows(file));
    }

    [Fact]
    public async Task A_known_mail_address_is_the_same_person_where_one_says_so()
    {
        await _office.Register(AStudent.Named("Robert", "Lane") with { Email = "rl@example.org", BirthDate = null });
        var file = await _desk.BringsTold(BringingAList.Head + "Bob,Lane,RL@example.org,,,,\nCy,Lane,cy@example.org,,,,\n", f => f with { SharedMail = "same-person" });

        Assert.Equal(["2 known: There already: same mail address as Robert Lane.", "3 new"], await _desk.Rows(file));
    }

    [Fact]
    public async Task Only_empty_fields_are_filled_and_nothing_is_overwritten()
    {
        var there = await _office.Register(AStudent.Named("Anna", "Berg") with { Email = "anna@example.org", Phone = "", BirthDate = null, Notes = "left-eyed" });
        var file = await _desk.BringsTold(
            "Given name,Family name,Mail,Phone,Birth date,Notes\nAnna,Berg,anna@example.org,0163 296 0001,1984-05-17,other notes\nAnna,Berg,anna@example.org,0163 296 0001,,\n",
            f => f with { WhenThere = "fill-empty" });
        Assert.Equal(["2 fills: There already: same name and mail address. Gets: phone, birth date.", "3 known: There already: same name and mail address. Nothing of it is empty."], await _desk.Rows(file));

        await _desk.BringsIn(file);

        var student = await _office.Read(db => db.Students.SingleAsync());
        Assert.Equal((there, "0163 296 0001", new LocalDate(1984, 5, 17), "left-eyed", 2), (student.Id, student.Phone, student.BirthDate, student.Notes, student.Version));
    }

    [Fact]
    public async Task A_minor_without_a_guardian_in_the_row_is_refused_even_where_the_rest_would_be_filled()
    {
        await _office.Register(AStudent.Named("Anna", "Berg") with { Email = "anna@example.org", BirthDate = null });
        var file = await _desk.BringsTold("Given name,Family name,Mail,Birth date\nAnna,Berg,anna@example.org,2016-05-17\n", f => f with { WhenThere = "fill-empty" });

        Assert.StartsWith("2 refused: A student under 18 needs a guardian", (await _desk.Rows(file)).Single(), StringComparison.Ordinal);
        Assert.Equal("nothing-to-bring", (await _office.Refuses((BringStudents bring) => bring.Of(file, _office.Desk))).Single().Code);
    }

    [Fact]
    public async Task Refused_rows_come_out_as_a_list_that_can_be_mended_and_brought_again()
    {
        var file = await _desk.BringsInTold(BringingAList.Head + "Anna,Berg,,,,,\n\"Eve, \"\"the first\"\"\",=1+1,nowhere,+44,,,\n");

        var text = Encoding.UTF8.GetString(await _office.Must((RefusedStudentRows rows) => rows.Of(file, _office.Desk)));

        Assert.Equal("\ufeffFirst name,Surname,Email,Phone,Date of birth,Guardian,Guardian email,Line,Why refused\r\n\"Eve, \"\"the first\"\"\",'=1+1,nowhere,'+44,,,,3,'nowhere' is no mail address; write it like name@example.org.\r\n", text);
        _office.Time.Advance(TimeSpan.FromHours(25));
        File.SetLastWriteTimeUtc(Directory.GetFiles(Path.Combine(_office.Folder, "student-files")).Single(), _office.Time.GetUtcNow().UtcDateTime.AddHours(-25));
        Assert.Equal(1, await _office.Do((SweepStudentFiles sweep) => sweep.Once(CancellationToken.None)));
        Assert.Equal("file-not-found", (await _office.Refuses((RefusedStudentRows rows) => rows.Of(file, _office.Desk))).Single().Code);
    }

    [Fact]
    public async Task A_list_without_a_refused_row_leaves_no_text_and_neither_does_a_dropped_one()
    {
        await _desk.BringsInTold(BringingAList.Head + "Anna,Berg,,,,,\n");
        var open = await _desk.Brings(BringingAList.Head + "Bo,Berg,,,,,\n");
        Assert.Single(Directory.GetFiles(Path.Combine(_office.Folder, "student-files")));
        Assert.Equal("file-not-found", (await _office.Refuses((PreviewStudentFile look) => look.Of(open.Id, null, 1, _office.Coach))).Single().Code);

        await _office.Must((DropStudentFile drop) => drop.Of(open.Id, _office.Desk));

        Assert.Empty(Directory.GetFiles(Path.Combine(_office.Folder, "student-files")));
        Assert.Equal(NotAllowed.Code, (await _desk.Tries([1, 2], Domain.Access.Actor.Student)).Refusals.Single().Code);
    }

    [Fact]
    public async Task Notes_over_several_lines_stay_one_row_and_lines_are_counted_in_the_file()
    {
        var file = await _desk.BringsTold("Given name,Notes\n\"Anna\",\"two\nlines\"\nBo,\n,no name\n");

        Assert.Equal(["2 new", "4 new", "5 refused: Give the student a name."], await _desk.Rows(file));
        await _desk.BringsIn(file);
        Assert.Equal("two\nlines", (await _office.Read(db => db.Students.SingleAsync(s => s.GivenName == "Anna"))).Notes);
    }
}

public sealed class StudentListsOnSqlite(SqliteOffice office) : StudentListTests(office), IClassFixture<SqliteOffice>;

public sealed class StudentListsOnPostgreSql(PostgreSqlOffice office) : StudentListTests(office), IClassFixture<PostgreSqlOffice>;
