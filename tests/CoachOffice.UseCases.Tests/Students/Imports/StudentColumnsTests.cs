using System.Text;
using CoachOffice.Domain.Students.Imports;
using CoachOffice.UseCases.Students.Imports;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Students.Imports;

/// <summary>Lists as they come: letters, separators, names and days, and what is asked.</summary>
public sealed class StudentColumnsTests(SqliteOffice fixture) : IClassFixture<SqliteOffice>
{
    [Theory]
    [InlineData("utf-8", true, ';')]
    [InlineData("utf-8", false, ',')]
    [InlineData("utf-16", true, '\t')]
    [InlineData("utf-16", false, ';')]
    [InlineData("utf-16BE", true, ',')]
    [InlineData("windows-1252", false, ';')]
    public async Task Any_usual_encoding_and_separator_reads_alike(string name, bool mark, char separator)
    {
        var office = await fixture.Another(opened: true);
        var desk = new BringingAList(office);
        var encoding = name == "windows-1252" ? CodePagesEncodingProvider.Instance.GetEncoding(1252)! : Encoding.GetEncoding(name);
        var text = "Vorname;Surname;Mail;Notes\nŽofie;Müller;z@example.org;„quoted“ – 5 €\n".Replace(';', separator);
        byte[] bytes = [.. mark ? encoding.GetPreamble() : [], .. encoding.GetBytes(text)];

        var file = (await desk.Tries(bytes)).Value;
        var form = (await desk.Columns(file.Id)).Form;
        Assert.Equal(["email", "family-name", "notes"], form.Fields.Values.Order(StringComparer.Ordinal));
        await desk.Says(file.Id, form with { Fields = new Dictionary<int, string>(form.Fields) { [0] = "given-name" } });
        await desk.BringsIn(file.Id);

        var student = await office.Read(db => db.Students.SingleAsync());
        Assert.Equal(("Žofie Müller", "„quoted“ – 5 €"), (student.FullName, student.Notes));
    }

    [Theory]
    [InlineData("Berg, Anna Maria", null, "Anna Maria|Berg")]
    [InlineData("Berg Anna Maria", "family-first", "Anna Maria|Berg")]
    [InlineData("Anna Maria Berg", "given-first", "Anna Maria|Berg")]
    [InlineData("Madonna", "given-first", "Madonna|")]
    public async Task Whole_names_are_read_as_one_says(string name, string? order, string parts)
    {
        var office = await fixture.Another(opened: true);
        var desk = new BringingAList(office);
        var file = await desk.Brings($"Name;Email\n{name};x@example.org\n");
        if (order is not null) Assert.Equal("name-order", (await desk.Columns(file.Id)).Open.Single().Code);

        var form = (await desk.Columns(file.Id)).Form;
        Assert.True((await desk.Says(file.Id, order is null ? form : form with { NameOrder = order })).Succeeded);
        await desk.BringsIn(file.Id);

        var student = await office.Read(db => db.Students.SingleAsync());
        Assert.Equal(parts, $"{student.GivenName}|{student.FamilyName}");
    }

    [Theory]
    [InlineData("03/04/1984", "", "day-order")]
    [InlineData("03/04/1984", "day-first", "1984-04-03")]
    [InlineData("03/04/1984", "month-first", "1984-03-04")]
    [InlineData("31/04/1984", "", "refused")]
    [InlineData("25/04/1984", "month-first", "1984-04-25")]
    [InlineData("04.03.84", "", "1984-03-04")]
    [InlineData("1984-04-03", "", "1984-04-03")]
    [InlineData("17 May 1984", "", "refused")]
    [InlineData("2031-01-01", "", "refused")]
    public async Task A_day_is_asked_about_where_it_can_be_read_two_ways(string cell, string order, string result)
    {
        var office = await fixture.Another(opened: true);
        var desk = new BringingAList(office);
        var file = await desk.Brings($"Given name,Birth date\nAnna,{cell}\n");
        var said = await desk.Says(file.Id, (await desk.Columns(file.Id)).Form with { DayOrder = order });
        if (result == "day-order")
        {
            Assert.Equal(result, said.Refusals.Single().Code);
            return;
        }

        Assert.True(said.Succeeded);
        if (result == "refused") Assert.Equal(RowFate.Refused, (await desk.Looks(file.Id)).Rows.Single().Fate);
        else
        {
            await desk.BringsIn(file.Id);
            Assert.Equal(NodaTime.Text.LocalDatePattern.Iso.Parse(result).Value, (await office.Read(db => db.Students.SingleAsync())).BirthDate);
        }
    }

    [Fact]
    public async Task What_was_said_is_remembered_for_the_same_columns_and_can_be_said_otherwise()
    {
        var desk = new BringingAList(await fixture.Another(opened: true));
        await desk.BringsTold("Call,Sign\nAnna,Berg\n", f => f with { Fields = new Dictionary<int, string> { [0] = "given-name", [1] = "family-name" } });

        var next = await desk.Brings("call,SIGN\nBo,Abel\n");
        Assert.Equal([StudentField.GivenName, StudentField.FamilyName], next.Columns!.Columns.Select(c => c.Field));
        Assert.True((await desk.Columns(next.Id)).IsRemembered);

        await desk.Says(next.Id, (await desk.Columns(next.Id)).Form with { Fields = new Dictionary<int, string> { [0] = "family-name", [1] = "given-name" } });
        Assert.Equal("Abel Bo", (await desk.Looks(next.Id)).Rows.Single().Name);
    }

    [Theory]
    [InlineData("", "", "name-missing")]
    [InlineData("given-name", "given-name", "field-twice")]
    [InlineData("full-name", "given-name", "name-twice")]
    [InlineData("given-name", "shoe-size", "field-unknown")]
    public async Task Columns_that_cannot_be_so_are_refused(string first, string second, string code)
    {
        var desk = new BringingAList(fixture.Office);
        var file = await desk.Brings("One,Other\nAnna,Berg\n");

        var said = await desk.Says(file.Id, new StudentColumnsForm { Fields = new Dictionary<int, string> { [0] = first, [1] = second }, NameOrder = "given-first" });

        Assert.Equal(code, said.Refusals.Single().Code);
    }

    [Theory]
    [InlineData("", "file-empty")]
    [InlineData("Given name,Mail\n", "file-no-rows")]
    [InlineData("just words\nand more\n", "file-no-columns")]
    public async Task What_is_no_list_is_refused_with_a_sentence(string text, string code) =>
        Assert.Equal(code, (await new BringingAList(fixture.Office).Tries(Encoding.UTF8.GetBytes(text))).Refusals.Single().Code);

    [Fact]
    public async Task Pictures_large_and_long_lists_are_refused_and_leave_nothing_behind()
    {
        var office = await fixture.Another(opened: true);
        var desk = new BringingAList(office);

        Assert.Equal("file-no-text", (await desk.Tries([0x50, 0x4b, 3, 4, 0, 0, 0, 13, 1, 2, 0, 0], name: "students.csv")).Refusals.Single().Code);
        Assert.Equal("file-too-large", (await desk.Tries(new byte[StudentFileStore.MostBytes + 1])).Refusals.Single().Code);
        Assert.Equal("file-too-long", (await desk.Tries(Encoding.UTF8.GetBytes("a,b\n" + string.Concat(Enumerable.Repeat("x,y\n", 20_001))))).Refusals.Single().Code);
        Assert.Empty(Directory.GetFiles(Path.Combine(office.Folder, "student-files")));
    }

    [Fact]
    public async Task Words_for_hand_and_level_are_read_as_people_write_them()
    {
        var office = await fixture.Another(opened: true);
        var desk = new BringingAList(office);
        var file = await desk.BringsTold("Given name,Hand,Level\nAnna,LH,Elite\nBo,Left-handed,\nCy,,beginner\nDi,both,\nEd,R,scratch\n");

        Assert.Equal(["2 new", "3 new", "4 new", "5 refused: Plays: 'both' is neither right nor left.", "6 refused: Level: 'scratch' is none of beginner, improver, experienced, elite."], await desk.Rows(file));
    }
}
