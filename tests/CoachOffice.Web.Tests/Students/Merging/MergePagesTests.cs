using System.Net;

namespace CoachOffice.Web.Tests.Students.Merging;

/// <summary>Two records become one by hand, without a line of script.</summary>
public sealed class MergePagesTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _owner = null!;

    public async ValueTask InitializeAsync() => _owner = await _office.OpensThePractice();

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task Records_that_look_alike_are_seen_side_by_side_chosen_from_and_merged()
    {
        var ida = await _owner.Registers();
        var other = await _owner.Registers("IDA", "Sommerfeld");
        await _owner.Open("/students/doubles");
        Assert.Contains("same name and birth date", _owner.Text, StringComparison.Ordinal);
        await _owner.Open(_owner.Page.QuerySelector(".rows a.button")!.GetAttribute("href")!);
        Assert.Contains("This cannot be undone", _owner.Text, StringComparison.Ordinal);
        Assert.Equal(["Given name", "Mail"], _owner.Page.QuerySelectorAll(".choose legend").Select(l => l.TextContent));

        await _owner.Send("main form", ("take[GivenName]", "stays"), ("take[Email]", "goes"));

        Assert.Equal(ida, _owner.Path);
        Assert.Contains("IDA@example.org", _owner.Text, StringComparison.Ordinal);
        Assert.Equal("Ida Sommerfeld", _owner.Heading);
        await _owner.Open(other);
        Assert.Equal(ida, _owner.Path);
        Assert.Contains("became part of the one you see", _owner.Page.Body!.TextContent, StringComparison.Ordinal);
        foreach (var page in (string[])["edit", "erase", "merge"])
        {
            await _owner.Open($"{other}/{page}");
            Assert.Equal(HttpStatusCode.NotFound, _owner.Status);
        }
    }

    [Fact]
    public async Task The_other_record_is_found_by_a_search_and_a_change_meanwhile_is_told()
    {
        var ida = await _owner.Registers();
        var bo = await _owner.Registers("Bo", "Abel");
        await _owner.Open($"{ida}/merge");
        await _owner.Send("form[role=search]", ("Text", "abel"));
        await _owner.Send("form[action*='See']");
        Assert.Equal($"{ida}/merge/{bo.Split('/')[^1]}", _owner.Path);

        await _owner.Send("main form", ("GoesVersion", "7"));
        Assert.Equal(HttpStatusCode.Conflict, _owner.Status);
        await _owner.Send("main form");
        Assert.Equal(ida, _owner.Path);
        await _owner.Open($"{ida}/merge/{ida.Split('/')[^1]}");
        Assert.Equal($"{ida}/merge", _owner.Path);
    }

    [Fact]
    public async Task Neither_the_desk_nor_a_stranger_merges()
    {
        var ida = await _owner.Registers();
        var bo = (await _owner.Registers("Bo", "Abel")).Split('/')[^1];
        var desk = await _owner.LetsIn(_office, "desk");
        await desk.Open(ida);
        Assert.Null(desk.Page.QuerySelector("a[href$='/merge']"));
        var stranger = new Visitor(_office);
        foreach (var page in new[] { "/students/doubles", $"{ida}/merge", $"{ida}/merge/{bo}" })
        {
            await desk.Open(page);
            Assert.Equal(HttpStatusCode.Forbidden, desk.Status);
            await stranger.Open(page);
            Assert.Equal("/sign-in", stranger.Path);
        }
    }
}
