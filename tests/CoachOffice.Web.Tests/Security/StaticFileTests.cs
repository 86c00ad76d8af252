using AngleSharp.Html.Parser;

namespace CoachOffice.Web.Tests.Security;

public sealed class StaticFileTests(OfficeHost office) : IClassFixture<OfficeHost>
{
    [Fact]
    public async Task Every_file_a_page_links_to_is_there_and_not_empty()
    {
        var client = office.CreateClient();
        var answer = await client.GetAsync(new Uri("/problem/404", UriKind.Relative), TestContext.Current.CancellationToken);
        var page = new HtmlParser().ParseDocument(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        string[] links = [.. page.QuerySelectorAll("link[href]").Select(l => l.GetAttribute("href")!), .. page.QuerySelectorAll("script[src]").Select(s => s.GetAttribute("src")!)];

        Assert.NotEmpty(links);
        foreach (var link in links.Concat(["/js/search.js", "/js/double-post.js"]))
        {
            var file = await client.GetAsync(new Uri(link, UriKind.RelativeOrAbsolute), TestContext.Current.CancellationToken);

            Assert.True(file.IsSuccessStatusCode, link);
            Assert.True((await file.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken)).Length > 40, link);
        }
    }

    [Fact]
    public void No_page_holds_an_inline_script_or_style()
    {
        var sources = Directory.EnumerateFiles(Path.Combine(Places.Repository, "src", "CoachOffice.Web"), "*.*", SearchOption.AllDirectories)
            .Where(f => f.EndsWith(".cshtml", StringComparison.Ordinal) || f.EndsWith(".razor", StringComparison.Ordinal));

        foreach (var file in sources)
        {
            var text = File.ReadAllText(file);
            Assert.DoesNotContain(" style=\"", text, StringComparison.Ordinal);
            Assert.DoesNotContain("<style", text, StringComparison.Ordinal);
            Assert.DoesNotMatch(@"<script(?![^>]*\bsrc=)", text);
            Assert.DoesNotMatch(@"\son[a-z]+=""", text);
        }
    }
}
