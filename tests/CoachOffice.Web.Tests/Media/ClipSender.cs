using System.Globalization;
using System.Net;

namespace CoachOffice.Web.Tests.Media;

/// <summary>A browser that sends a clip in parts by the open tus protocol.</summary>
internal sealed class ClipSender(HttpClient client, string proof)
{
    /// <summary>The sign-in cookies of a visitor, who stands on a page with a form.</summary>
    public static ClipSender Of(Visitor person) => new(person.Client, person.Page.QuerySelector("[name=form-proof]")!.GetAttribute("value")!);

    /// <summary>Ends the request under way, as a lost connection does.</summary>
    public CancellationTokenSource Line { get; set; } = new();

    public HttpResponseMessage Answer { get; private set; } = new();

    public HttpStatusCode Status => Answer.StatusCode;

    public string? Header(string name) => Answer.Headers.TryGetValues(name, out var values) || Answer.Content.Headers.TryGetValues(name, out values) ? values.Single() : null;

    public Task Creates(string lesson, long length) => Sends(HttpMethod.Post, $"{lesson}/clips/uploads", null, ("Upload-Length", Text(length)));

    public Task Asks(string address) => Sends(HttpMethod.Head, address, null);

    public Task Drops(string address) => Sends(HttpMethod.Delete, address, null);

    public Task Patches(string address, long offset, Stream part, string type = "application/offset+octet-stream")
    {
        var content = new StreamContent(part);
        content.Headers.Add("Content-Type", type);
        return Sends(HttpMethod.Patch, address, content, ("Upload-Offset", Text(offset)));
    }

    public async Task Sends(HttpMethod method, string address, HttpContent? content, params (string Name, string Value)[] headers)
    {
        var request = new HttpRequestMessage(method, address) { Content = content };
        foreach (var (name, value) in headers.Where(h => h.Value.Length > 0)) request.Headers.Add(name, value);
        if (!request.Headers.Contains("Tus-Resumable")) request.Headers.Add("Tus-Resumable", "1.0.0");
        request.Headers.Add("X-Form-Proof", proof);
        Answer = await client.SendAsync(request, Line.Token);
    }

    private static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);
}
