using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Access;

/// <summary>Private links: whoever holds the token may do one thing with one plan, or with the own lessons. Only the token's hash is kept.</summary>
public sealed class PrivateLinks(OfficeDb db, INewIds ids, IClock clock, CheckLink check)
{
    // Who finds an old mail may still stop what comes today.
    private static readonly Duration StopLife = Duration.FromDays(730);

    private readonly List<PrivateLink> _issued = [];

    /// <summary>Those minted in this scope, in order.</summary>
    internal IReadOnlyList<PrivateLink> Issued => _issued;

    /// <summary>A new token (256 random bits, base64url). The row is added to the caller's transaction; the token itself is kept nowhere.</summary>
    public async Task<string> Mint(PlanId plan, Duration life, LinkPurpose purpose = LinkPurpose.Plan, CancellationToken stop = default)
    {
        if (purpose == LinkPurpose.Visits) throw new ArgumentException("A link to the lessons belongs to a student, not to a plan.", nameof(purpose));
        return Issue(await StudentOf(plan, stop), plan, life, purpose);
    }

    /// <summary>As <see cref="Mint(PlanId, Duration, LinkPurpose, CancellationToken)"/>, for a plan at hand.</summary>
    public string Mint(Plan plan, Duration life, LinkPurpose purpose)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (purpose == LinkPurpose.Visits) throw new ArgumentException("A link to the lessons belongs to a student, not to a plan.", nameof(purpose));
        return Issue(plan.StudentId, plan.Id, life, purpose);
    }

    /// <summary>A new token that opens a student's own lessons; kept and added like those of a plan.</summary>
    public string MintVisits(StudentId student, Duration life) => Issue(student, null, life, LinkPurpose.Visits);

    /// <summary>What the token allows now (noting when it was last used, nothing else), or null: unknown, expired, revoked, of another purpose, or of a plan that is not in the student's hands.</summary>
    public async Task<LinkPass?> Open(string token, LinkPurpose purpose = LinkPurpose.Plan, CancellationToken stop = default)
    {
        if (await Find(token, purpose, stop) is not { } link) return null;
        var pass = await check.StillOpen(link, clock.GetCurrentInstant(), stop);
        if (pass is not null) await Note(link, stop);
        return pass;
    }

    /// <summary>Whose lessons the token opens now (noting when it was last used, nothing else), or null: unknown, expired, revoked, of another purpose, or of an erased student.</summary>
    public async Task<VisitPass?> OpenVisits(string token, CancellationToken stop = default)
    {
        if (await Find(token, LinkPurpose.Visits, stop) is not { } link) return null;
        var pass = await check.StillOpensVisits(link, clock.GetCurrentInstant(), stop);
        if (pass is not null) await Note(link, stop);
        return pass;
    }

    /// <summary>A new token that stops a student's messages, those of a purpose first; kept and added like the others.</summary>
    public string MintStop(StudentId student, MessagePurpose purpose)
    {
        var (token, sha256) = LinkTokens.New();
        var now = clock.GetCurrentInstant();
        Keep(PrivateLink.IssueStop(ids.Next(), sha256, student, purpose, new Interval(now, now + StopLife)));
        return token;
    }

    /// <summary>Whose messages the token stops now (noting when it was last used, nothing else), or null: unknown, expired, revoked, of another purpose, or of an erased student.</summary>
    public async Task<PrivateLink?> OpenStop(string token, CancellationToken stop = default)
    {
        if (await Find(token, LinkPurpose.StopMessages, stop) is not { } id) return null;
        var link = await db.PrivateLinks.AsNoTracking().SingleAsync(l => l.Id == id, stop);
        if (!link.IsOpenAt(clock.GetCurrentInstant()) || !await db.Students.AnyAsync(s => s.Id == link.StudentId && s.ErasedAt == null, stop)) return null;
        await Note(id, stop);
        return link;
    }

    private string Issue(StudentId student, PlanId? plan, Duration life, LinkPurpose purpose)
    {
        var (token, sha256) = LinkTokens.New();
        var now = clock.GetCurrentInstant();
        Keep(PrivateLink.Issue(ids.Next(), sha256, student, plan, new Interval(now, now + life), purpose));
        return token;
    }

    private void Keep(PrivateLink link)
    {
        db.PrivateLinks.Add(link);
        _issued.Add(link);
    }

    private async Task<Guid?> Find(string token, LinkPurpose purpose, CancellationToken stop)
    {
        if (LinkTokens.HashOf(token) is not { } hash) return null;
        return await db.PrivateLinks.Where(l => l.TokenSha256 == hash && l.Purpose == purpose).Select(l => (Guid?)l.Id).SingleOrDefaultAsync(stop);
    }

    private Task<int> Note(Guid link, CancellationToken stop)
    {
        var now = clock.GetCurrentInstant();
        return db.PrivateLinks.Where(l => l.Id == link).ExecuteUpdateAsync(l => l.SetProperty(x => x.LastOpenedAt, now), stop);
    }

    private async Task<StudentId> StudentOf(PlanId plan, CancellationToken stop) =>
        db.Plans.Local.FirstOrDefault(p => p.Id == plan)?.StudentId ?? await db.Plans.Where(p => p.Id == plan).Select(p => p.StudentId).SingleAsync(stop);
}
