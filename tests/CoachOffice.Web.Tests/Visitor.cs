using System.Net;
using System.Net.Http.Headers;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;

namespace CoachOffice.Web.Tests;

/// <summary>A person at a browser without JavaScript: keeps cookies, reads pages, fills in forms and sends them.</summary>
public sealed class Visitor(HttpClient client)
{
    private readonly HttpClient _client = client;

    public Visitor(OfficeHost office)
        : this(office.Stranger())
    {
    }

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    /// <summary>For what no form of a page does.</summary>
    public HttpClient Client => _client;

    /// <summary>The last answer, after following redirects.</summary>
    public HttpResponseMessage Answer { get; private set; } = new();

    /// <summary>Every header of every answer on the way to the last one.</summary>
    public List<HttpResponseMessage> Way { get; } = [];

    /// <summary>The page shown now.</summary>
    public IHtmlDocument Page { get; private set; } = new HtmlParser().ParseDocument("");

    public HttpStatusCode Status => Answer.StatusCode;

    public string Path => Answer.RequestMessage!.RequestUri!.AbsolutePath;

    public string Heading => Page.QuerySelector("h1")?.TextContent.Trim() ?? "";

    public string Text => Page.QuerySelector("main")?.TextContent ?? "";

    /// <summary>What the alert on the page says.</summary>
    public string Alert => Page.QuerySelector("[role=alert]")?.TextContent ?? "";

    /// <summary>Goes on from the page another browser stands on.</summary>
    public void Holds(Visitor other) => (Page, Answer) = (other.Page, other.Answer);

    public Task Open(string path) => Follow(new HttpRequestMessage(HttpMethod.Get, path));

    /// <summary>Asks for what the browser holds already.</summary>
    public Task Open(string path, EntityTagHeaderValue held)
    {
        var asked = new HttpRequestMessage(HttpMethod.Get, path);
        asked.Headers.IfNoneMatch.Add(held);
        return Follow(asked);
    }

    /// <summary>Follows the first link that opens a form of this kind.</summary>
    public Task Opens(string kind) => Open(Page.QuerySelector($"a.opener[href*='open={kind}-']")?.GetAttribute("href") ?? throw new InvalidOperationException($"Nothing opens a form '{kind}' on {Path}."));

    /// <summary>Sends a form of the page as a browser would, with some fields filled in; a field given as null is left out.</summary>
    public Task Send(string form, params (string Name, string? Value)[] filled) => Send(form, filled, part: false);

    /// <summary>The same with another button of the form, which sends it elsewhere.</summary>
    public Task SendTo(string address, string form, params (string Name, string? Value)[] filled)
    {
        var sent = Page.QuerySelector<IHtmlFormElement>(form) ?? throw new InvalidOperationException($"No form '{form}' on {Path}.");
        sent.SetAttribute("action", address);
        return Send(sent, filled, part: false);
    }

    /// <summary>The same as our script does it, which asks for a part of the page.</summary>
    public Task Part(string form, params (string Name, string? Value)[] filled) => Send(form, filled, part: true);

    /// <summary>The same in the form scripts use, in parts.</summary>
    public Task SendParts(string address, string form, params (string Name, string Value)[] filled)
    {
        var sent = Page.QuerySelector<IHtmlFormElement>(form) ?? throw new InvalidOperationException($"No form '{form}' on {Path}.");
        var parts = new MultipartFormDataContent();
        foreach (var (name, value) in Fields(sent).Where(f => filled.All(x => x.Name != f.Key))) parts.Add(new StringContent(value), $"\"{name}\"");
        foreach (var (name, value) in filled) parts.Add(new StringContent(value), $"\"{name}\"");
        return Follow(new HttpRequestMessage(HttpMethod.Post, address) { Content = parts });
    }

    /// <summary>Sends a form with a file chosen.</summary>
    public Task SendFile(string form, (string Field, string Name, byte[] Bytes) file, params (string Name, string Value)[] filled)
    {
        var sent = Page.QuerySelector<IHtmlFormElement>(form) ?? throw new InvalidOperationException($"No form '{form}' on {Path}.");
        var parts = new MultipartFormDataContent { { new ByteArrayContent(file.Bytes), $"\"{file.Field}\"", file.Name } };
        foreach (var (name, value) in Fields(sent).Where(f => f.Key != file.Field && filled.All(x => x.Name != f.Key))) parts.Add(new StringContent(value), $"\"{name}\"");
        foreach (var (name, value) in filled) parts.Add(new StringContent(value), $"\"{name}\"");
        return Follow(new HttpRequestMessage(HttpMethod.Post, Answer.RequestMessage!.RequestUri!.AbsolutePath) { Content = parts });
    }

    private Task Send(string form, (string Name, string? Value)[] filled, bool part) =>
        Send(Page.QuerySelector<IHtmlFormElement>(form) ?? throw new InvalidOperationException($"No form '{form}' on {Path}."), filled, part);

    private Task Send(IHtmlFormElement sent, (string Name, string? Value)[] filled, bool part)
    {
        var fields = Fields(sent).Where(f => filled.All(x => x.Name != f.Key)).ToList();
        fields.AddRange(filled.Where(f => f.Value is not null).Select(f => new KeyValuePair<string, string>(f.Name, f.Value!)));
        var action = sent.GetAttribute("action") is { Length: > 0 } given ? given : Answer.RequestMessage!.RequestUri!.PathAndQuery;
        var request = new HttpRequestMessage(HttpMethod.Post, action) { Content = new FormUrlEncodedContent(fields) };
        if (part) request.Headers.Add("X-Part", "results");
        return Follow(request);
    }

    private async Task Follow(HttpRequestMessage first)
    {
        Way.Clear();
        Answer = await Fetch(first);
        for (var steps = 0; Answer.StatusCode is HttpStatusCode.Found or HttpStatusCode.SeeOther && steps < 6; steps++)
            Answer = await Fetch(new HttpRequestMessage(HttpMethod.Get, Answer.Headers.Location));
        Page = new HtmlParser().ParseDocument(await Answer.Content.ReadAsStringAsync(Ct));
    }

    private async Task<HttpResponseMessage> Fetch(HttpRequestMessage request)
    {
        var answer = await _client.SendAsync(request, Ct);
        Way.Add(answer);
        return answer;
    }

    private static IEnumerable<KeyValuePair<string, string>> Fields(IHtmlFormElement form)
    {
        foreach (var field in form.Elements)
        {
            var (name, value) = field switch
            {
                IHtmlInputElement { Type: "checkbox" or "radio", IsChecked: false } => (null, null),
                IHtmlInputElement input => (input.Name, input.Value),
                IHtmlSelectElement select => (select.Name, select.Value),
                IHtmlTextAreaElement text => (text.Name, text.Value),
                _ => ((string?)null, (string?)null),
            };
            if (!string.IsNullOrEmpty(name)) yield return new(name, value ?? "");
        }
    }
}
