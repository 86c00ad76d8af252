using CoachOffice.UseCases;
using CoachOffice.UseCases.Access;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using NodaTime;

namespace CoachOffice.Web.Features.Settings;

[Authorize(Policy = OfficePolicies.Own)]
public sealed class HistoryModel(ListAudit audit, PracticeClock clock) : OfficePage
{
    public AuditPage Shown { get; private set; } = new([], 1, false);

    public DateTimeZone Zone { get; private set; } = DateTimeZone.Utc;

    public async Task OnGetAsync([FromQuery] int page = 1)
    {
        Zone = await clock.Zone();
        Shown = (await audit.Now(page, null, Actor)).Value;
    }
}
