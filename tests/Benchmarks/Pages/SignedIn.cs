using System.Net;
using System.Net.Http.Headers;
using System.Text.RegularExpressions;
using CoachOffice.Benchmarks.Office;

namespace CoachOffice.Benchmarks.Pages;

/// <summary>A person signed in to a running office, over loopback, with as many connections as asked for at once.</summary>
internal sealed partial class SignedIn : IDisposable
{
    private readonly HttpClient _client;

    private SignedIn(Uri address) =>
        _client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false, CookieContainer = new CookieContainer(), MaxConnectionsPerServer = 16 }) { BaseAddress = address };

    public static async Task<SignedIn> To(Uri address)
    {
        var person = new SignedIn(address);
        var page = await person._client.GetStringAsync(new Uri("/sign-in", UriKind.Relative));
        using var answer = await person.Post("/sign-in", page, ("Input.Email", FirstPeople.Email), ("Input.Password", FirstPeople.Password));
        return answer.StatusCode is HttpStatusCode.Found or HttpStatusCode.SeeOther ? person : throw new InvalidOperationException($"Signing in answered {answer.StatusCode}.");
    }

    /// <summary>The proof of origin that a page's forms carry.</summary>
    public async Task<string> Page(string path) => await _client.GetStringAsync(new Uri(path, UriKind.Relative));

    /// <summary>Asks for a page that must be there; how many bytes came.</summary>
    public async Task<int> Get(string path)
    {
        using var answer = await _client.GetAsync(new Uri(path, UriKind.Relative));
        return await Read(path, answer);
    }

    /// <summary>What an answer is known by.</summary>
    public async Task<EntityTagHeaderValue> Tag(string path)
    {
        using var answer = await _client.GetAsync(new Uri(path, UriKind.Relative));
        return answer.Headers.ETag ?? throw new InvalidOperationException($"{path} has no tag.");
    }

    /// <summary>Asks for what is held already; no byte must come.</summary>
    public async Task<int> Holds(string path, EntityTagHeaderValue tag)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(path, UriKind.Relative));
        request.Headers.IfNoneMatch.Add(tag);
        using var answer = await _client.SendAsync(request);
        return answer.StatusCode == HttpStatusCode.NotModified ? 0 : throw new InvalidOperationException($"{path} answered {answer.StatusCode}.");
    }

    /// <summary>Sends a search as the page's script does.</summary>
    public async Task<int> Search(string page, string text)
    {
        using var answer = await Post("/students", page, part: true, ("Text", text));
        return await Read("/students", answer);
    }

    /// <summary>Sends a form of a page and reads the page that comes back; how many bytes came.</summary>
    public async Task<int> Submit(string address, string page, params (string Name, string Value)[] fields)
    {
        using var answer = await Post(address, page, part: false, fields);
        return await Read(address, answer);
    }

    public void Dispose() => _client.Dispose();

    private static async Task<int> Read(string path, HttpResponseMessage answer)
    {
        if (answer.StatusCode != HttpStatusCode.OK) throw new InvalidOperationException($"{path} answered {answer.StatusCode}.");
        return (await answer.Content.ReadAsByteArrayAsync()).Length;
    }

    private Task<HttpResponseMessage> Post(string path, string page, params (string Name, string Value)[] fields) => Post(path, page, part: false, fields);

    private async Task<HttpResponseMessage> Post(string path, string page, bool part, params (string Name, string Value)[] fields)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, new Uri(path, UriKind.Relative))
        {
            Content = new FormUrlEncodedContent([new("form-proof", FormProof().Match(page).Groups["proof"].Value), .. fields.Select(f => KeyValuePair.Create(f.Name, f.Value))]),
        };
        if (part) request.Headers.Add("X-Part", "results");
        return await _client.SendAsync(request);
    }

    [GeneratedRegex("name=\"form-proof\"[^>]* value=\"(?<proof>[^\"]+)\"", RegexOptions.None, 1000)]
    private static partial Regex FormProof();
}
