using System.Text;
using CoachOffice.UseCases.Lessons.Imports;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.UseCases.Tests.Lessons.Imports;

/// <summary>Files as they come: what is read, what is asked, what is refused.</summary>
public sealed class DeviceFileTests(SqliteOffice fixture) : IClassFixture<SqliteOffice>
{
    private const string Two = "Club speed [mph],Club path [deg]\n";

    [Theory]
    [InlineData("", "file-empty")]
    [InlineData("\n\n  \n", "file-empty")]
    [InlineData(Two, "file-no-rows")]
    [InlineData("Club speed,Club path\nmph,deg\n", "file-no-rows")]
    [InlineData("just words\nand more\n", "file-no-columns")]
    [InlineData("98,2\n97,1\n", "file-no-names")]
    public async Task What_holds_no_swings_is_refused_with_a_sentence(string text, string code) =>
        Assert.Equal(code, (await (await Bringing.For(fixture.Office)).IsRefused(text)).Single().Code);

    [Fact]
    public async Task Pictures_large_files_and_long_files_are_refused_and_leave_nothing_behind()
    {
        var coach = await Bringing.For(fixture.Office);
        var long1 = Two + string.Concat(Enumerable.Repeat("98,1\n", 50_001));

        Assert.Equal("file-no-text", (await coach.Tries([0x89, 0x50, 0x4e, 0x47, 0, 0, 0, 13, 1, 2, 0, 0])).Refusals.Single().Code);
        Assert.Equal("file-too-large", (await coach.Tries(new byte[DeviceFileStore.MostBytes + 1])).Refusals.Single().Code);
        Assert.Equal("file-too-long", (await coach.IsRefused(long1)).Single().Code);
        Assert.Equal("file-long-row", (await coach.IsRefused(Two + "98," + new string('x', 3_000_000) + "\n")).Single().Code);
        Assert.DoesNotContain(fixture.Office.Services.GetRequiredService<DeviceFileStore>().All(), id => File.ReadAllText(fixture.Office.Services.GetRequiredService<DeviceFileStore>().PathOf(id)).Length > 100_000);
    }

    [Theory]
    [InlineData("utf-8", true)]
    [InlineData("utf-8", false)]
    [InlineData("utf-16", true)]
    [InlineData("utf-16", false)]
    [InlineData("utf-16BE", true)]
    [InlineData("utf-16BE", false)]
    [InlineData("iso-8859-1", false)]
    public async Task Any_usual_encoding_reads_alike(string name, bool mark)
    {
        var coach = await Bringing.For(fixture.Office);
        var encoding = Encoding.GetEncoding(name);
        byte[] bytes = [.. mark ? encoding.GetPreamble() : [], .. encoding.GetBytes("Schläger;Club speed (mph);Attack angle (°)\nHölzchen;98,4;2,1\n")];

        var columns = await coach.Columns((await coach.Tries(bytes)).Value);

        Assert.Equal(["Schläger", "Club speed", "Attack angle"], columns.Columns.Select(c => c.Name));
        Assert.Equal("Hölzchen", columns.Samples[0].Single());
        Assert.Equal("comma", columns.Form.Decimals);
        Assert.Equal(["club-speed mph", "attack-angle deg"], columns.Form.Columns.Select(c => $"{c.Measure} {c.Unit}"));
    }

    [Fact]
    public async Task Units_may_stand_in_a_row_of_their_own()
    {
        var coach = await Bringing.For(fixture.Office);
        var columns = await coach.Columns(await coach.Brings("Club,Club Speed,Club Path,Carry\n,[km/h],[deg],[yds]\nDriver,150,1,220\n"));

        Assert.Equal(1, columns.Rows);
        Assert.Equal(["km/h", "deg", "yd"], columns.Form.Columns.Select(c => c.Unit));
        Assert.Equal("driver", columns.Form.Clubs["Driver"]);
    }

    [Fact]
    public async Task Columns_of_one_name_are_told_apart_and_none_is_guessed()
    {
        var coach = await Bringing.For(fixture.Office);
        var columns = await coach.Columns(await coach.Brings("Club speed (mph),Ball speed (mph),Club speed (mph)\n98,140,97\n"));

        Assert.Equal(["Club speed (the 1. of this name)", "Ball speed", "Club speed (the 2. of this name)"], columns.Columns.Select(c => c.Name));
        Assert.Equal("ball-speed", columns.Form.Columns.Single().Measure);
    }

    [Fact]
    public async Task What_is_open_is_asked_for_and_never_guessed()
    {
        var coach = await Bringing.For(fixture.Office);
        var file = await coach.Brings("Date,Club,Club speed,Club path,Spin rate\n03/04/2026,Stick,98,1,\"2,650\"\n");

        var open = (await coach.Says(file, (await coach.Columns(file)).Form)).Refusals;

        Assert.Equal(["club-word", "day-order", "decimals-open", "sign-missing", "unit-missing"], open.Select(r => r.Code).Order());
        Assert.Contains("in-to-out or out-to-in", open.Single(r => r.Code == "sign-missing").Sentence, StringComparison.Ordinal);
        Assert.Contains("m/s, mph, km/h", open.Single(r => r.Code == "unit-missing").Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Face_to_path_asks_with_the_words_open_and_closed()
    {
        var coach = await Bringing.For(fixture.Office);
        var file = await coach.Brings("Face to path [deg],Club path [deg]\n1,2\n");

        var open = (await coach.Says(file, (await coach.Columns(file)).Form)).Refusals;

        Assert.Contains(open, r => r.Sentence.Contains("open or closed", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("98.4", "97.25", "point")]
    [InlineData("98,4", "97,25", "comma")]
    [InlineData("1.234,5", "98", "comma")]
    [InlineData("98.4", "2,650", "point")]
    [InlineData("98", "97", "point")]
    [InlineData("1,234", "98", "")]
    [InlineData("1.234", "98", "")]
    [InlineData("98.4", "97,2", "")]
    public async Task The_decimal_mark_is_told_only_by_numbers_that_can_be_read_one_way(string one, string other, string mark)
    {
        var coach = await Bringing.For(fixture.Office);
        var columns = await coach.Columns(await coach.Brings($"Club speed [mph];Spin rate [rpm]\n{one};{other}\n"));

        Assert.Equal(mark, columns.Form.Decimals);
    }

    [Fact]
    public async Task A_file_told_before_is_read_at_once_unless_its_numbers_are_written_otherwise()
    {
        var coach = await Bringing.For(await fixture.Another(opened: true));
        const string names = "Date;Club;Club speed [mph];Carry [m]\n";
        await coach.BringsTold(names + "2026-02-20;Driver;98,4;200,5\n");

        Assert.NotNull((await coach.Brings(names.ToUpperInvariant().Replace("MPH", "mph", StringComparison.Ordinal).Replace("[M]", "[m]", StringComparison.Ordinal) + "2026-02-21;Driver;97,5;201,5\n")).Answers);
        Assert.Null((await coach.Brings(names + "2026-02-22;Driver;97.5;201.5\n")).Answers);
        Assert.Null((await coach.Brings(names + "2026-02-23;Driver;97,5;201.5\n")).Answers);
        Assert.Null((await coach.Brings(names + "2026-02-24;Spoon;97,5;201,5\n")).Answers);
    }
}
