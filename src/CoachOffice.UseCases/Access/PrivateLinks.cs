using System.Buffers.Text;
using System.Security.Cryptography;
using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Access;

/// <summary>Private links: whoever holds the token may do one thing with one plan. Only the token's hash is kept.</summary>
public sealed class PrivateLinks(OfficeDb db, INewIds ids, IClock clock, CheckLink check)
{
    private const int TokenBytes = 32;

    /// <summary>A new token (256 random bits, base64url). The row is added to the caller's transaction; the token itself is kept nowhere.</summary>
    public async Task<string> Mint(PlanId plan, Duration life, LinkPurpose purpose = LinkPurpose.Plan, CancellationToken stop = default)
    {
        var student = await StudentOf(plan, stop);
        var bytes = RandomNumberGenerator.GetBytes(TokenBytes);
        var now = clock.GetCurrentInstant();
        db.PrivateLinks.Add(PrivateLink.Issue(ids.Next(), HashOf(bytes), student, plan, new Interval(now, now + life), purpose));
        return Base64Url.EncodeToString(bytes);
    }

    /// <summary>What the token allows now (noting when it was last used, nothing else), or null: unknown, expired, revoked, of another purpose, or of a plan that is not in the student's hands.</summary>
    public async Task<LinkPass?> Open(string token, LinkPurpose purpose = LinkPurpose.Plan, CancellationToken stop = default)
    {
        if (BytesOf(token) is not { } bytes) return null;
        var hash = HashOf(bytes);
        var link = await db.PrivateLinks.AsNoTracking().SingleOrDefaultAsync(l => l.TokenSha256 == hash && l.Purpose == purpose, stop);
        if (link is null) return null;
        var now = clock.GetCurrentInstant();
        var pass = await check.StillOpen(link.Id, now, stop);
        if (pass is not null) await db.PrivateLinks.Where(l => l.Id == link.Id).ExecuteUpdateAsync(l => l.SetProperty(x => x.LastOpenedAt, now), stop);
        return pass;
    }

    private async Task<StudentId> StudentOf(PlanId plan, CancellationToken stop) =>
        db.Plans.Local.FirstOrDefault(p => p.Id == plan)?.StudentId ?? await db.Plans.Where(p => p.Id == plan).Select(p => p.StudentId).SingleAsync(stop);

    private static string HashOf(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    private static byte[]? BytesOf(string? token)
    {
        var bytes = new byte[TokenBytes];
        return token is { Length: 43 } && Base64Url.IsValid(token) && Base64Url.TryDecodeFromChars(token, bytes, out var written) && written == TokenBytes ? bytes : null;
    }
}
