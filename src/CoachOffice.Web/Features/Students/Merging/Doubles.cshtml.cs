using CoachOffice.UseCases.Students.Merging;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;

namespace CoachOffice.Web.Features.Students.Merging;

/// <summary>Records that may be one person.</summary>
[Authorize(OfficePolicies.Teach)]
public sealed class DoublesModel(FindDoubles find) : OfficePage
{
    public IReadOnlyList<DoublePair> Pairs { get; private set; } = [];

    public async Task OnGetAsync() => Pairs = await find.Now();
}
