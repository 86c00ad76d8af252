using CoachOffice.Domain.Access;
using Microsoft.Extensions.Caching.Memory;

namespace CoachOffice.Web.Shell.Security;

/// <summary>A code from an authenticator app opens once: who looks over a shoulder gets nothing from it. Identity takes a code for some minutes around its time, so we remember it longer.</summary>
public sealed class UsedCodes(IMemoryCache cache)
{
    private static readonly TimeSpan Longer = TimeSpan.FromMinutes(10);

    public bool WasUsed(AccountId account, string code) => cache.TryGetValue((account, code), out _);

    public void Use(AccountId account, string code) => cache.Set((account, code), true, Longer);
}
