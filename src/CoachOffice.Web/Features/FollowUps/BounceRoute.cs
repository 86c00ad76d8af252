using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using CoachOffice.UseCases.FollowUps.Bounces;
using CoachOffice.Web.Shell.Security;

namespace CoachOffice.Web.Features.FollowUps;

/// <summary>
/// Takes notices of undelivered mail from a mail provider: JSON, signed with the secret of <c>Office:Mail:Bounces:Secret</c> (HMAC-SHA-256 of the body, hex, in
/// <c>X-CoachOffice-Signature</c>). Without a secret there is no such door. The answer never tells whether a message is known.
/// </summary>
internal static class BounceRoute
{
    public const string Signature = "X-CoachOffice-Signature";

    private const int LargestBody = 64 * 1024;
    private const int MostNotices = 100;
    private static readonly JsonSerializerOptions Reading = new(JsonSerializerDefaults.Web);

    public static void MapBounces(this WebApplication app) =>
        app.MapPost(AnonymousPages.Bounces, Take).AllowAnonymous().RequireRateLimiting(RateLimits.Links);

    private static async Task<IResult> Take(HttpRequest request, BounceSettings settings, KeepBounce keep)
    {
        if (settings.Secret.Length == 0) return Results.NotFound();
        if (await Body(request) is not { } body) return Results.StatusCode(StatusCodes.Status413PayloadTooLarge);
        if (!IsSigned(body, settings.Secret, request.Headers[Signature].ToString())) return Results.Unauthorized();
        if (Read(body) is not { } notices) return Results.BadRequest();
        foreach (var notice in notices)
            if (BounceReader.Id(notice.MessageId) is { } id && notice.Recipient is { Length: > 0 and <= 254 } address) await keep.Of(new BounceNotice(id, address, notice.Status ?? ""), request.HttpContext.RequestAborted);
        return Results.Accepted();
    }

    private static bool IsSigned(byte[] body, string secret, string said)
    {
        var hex = said.StartsWith("sha256=", StringComparison.Ordinal) ? said["sha256=".Length..] : said;
        var right = Convert.ToHexStringLower(HMACSHA256.HashData(Encoding.UTF8.GetBytes(secret), body));
        return CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(right), Encoding.UTF8.GetBytes(hex.ToLowerInvariant()));
    }

    private static async Task<byte[]?> Body(HttpRequest request)
    {
        var buffer = new byte[LargestBody + 1];
        var length = await request.Body.ReadAtLeastAsync(buffer, buffer.Length, throwOnEndOfStream: false, request.HttpContext.RequestAborted);
        return length > LargestBody ? null : buffer[..length];
    }

    private static IReadOnlyList<PostedBounce>? Read(byte[] body)
    {
        try
        {
            var posted = JsonSerializer.Deserialize<PostedBounces>(body, Reading);
            return posted?.Notices is { Count: > 0 and <= MostNotices } notices && notices.All(n => n is not null) ? notices : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
