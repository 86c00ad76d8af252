using System.Net;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace CoachOffice.UseCases.FollowUps.Texts;

/// <summary>
/// Posts texts to a gateway: JSON <c>{"id","to","text"}</c>, the id also as <c>Idempotency-Key</c>, signed with HMAC-SHA-256 of the body in
/// <c>X-CoachOffice-Signature</c>. 2xx: taken. 4xx: refused, save 408, 425 and 429. 503, or no connection: certainly not, later. Anything else after the
/// post began: nobody knows, and the id lets it be repeated without doubling.
/// </summary>
internal sealed class GatewayTextDoor(HttpClient client, TextSettings settings) : ITextDoor
{
    public async Task<Handover> HandOver(TextMessage text, CancellationToken stop)
    {
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(stop);
        limit.CancelAfter(TimeSpan.FromSeconds(settings.TimeoutSeconds));
        try
        {
            using var post = Post(text);
            using var answer = await client.SendAsync(post, HttpCompletionOption.ResponseHeadersRead, limit.Token);
            return OfStatus(answer.StatusCode);
        }
        catch (HttpRequestException failure) when (failure.HttpRequestError is HttpRequestError.ConnectionError or HttpRequestError.NameResolutionError or HttpRequestError.SecureConnectionError)
        {
            return new Handover(HandoverResult.TryLater, "text-gateway-down");
        }
        catch (Exception failure) when (failure is HttpRequestException or OperationCanceledException or IOException)
        {
            return new Handover(HandoverResult.Unknown, Problems.SentUnknown);
        }
    }

    private static Handover OfStatus(HttpStatusCode status) => (int)status switch
    {
        >= 200 and < 300 => Handover.Taken,
        408 or 425 or 429 or 503 => new Handover(HandoverResult.TryLater, "text-gateway-busy"),
        >= 400 and < 500 => new Handover(HandoverResult.Refused, "text-refused"),
        >= 300 and < 400 => new Handover(HandoverResult.TryLater, "text-gateway-down"),
        _ => new Handover(HandoverResult.Unknown, Problems.SentUnknown),
    };

    private HttpRequestMessage Post(TextMessage text)
    {
        var body = JsonSerializer.SerializeToUtf8Bytes(new { id = text.Id, to = text.To, text = text.Text });
        var post = new HttpRequestMessage(HttpMethod.Post, settings.Url) { Content = new ByteArrayContent(body) };
        post.Content.Headers.ContentType = new("application/json") { CharSet = "utf-8" };
        post.Headers.Add("Idempotency-Key", text.Id);
        post.Headers.Add("X-CoachOffice-Signature", $"sha256={Convert.ToHexStringLower(HMACSHA256.HashData(Encoding.UTF8.GetBytes(settings.Secret), body))}");
        return post;
    }
}
