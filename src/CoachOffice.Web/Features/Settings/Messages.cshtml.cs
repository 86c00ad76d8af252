using CoachOffice.UseCases.FollowUps.Wordings;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;

namespace CoachOffice.Web.Features.Settings;

/// <summary>All kinds of messages and what was decided about them.</summary>
[Authorize(Policy = OfficePolicies.Own)]
public sealed class MessagesModel(ReadRules read) : OfficePage
{
    public const string Address = "/settings/messages";

    public IReadOnlyList<RuleView> Rules { get; private set; } = [];

    public async Task OnGetAsync() => Rules = (await read.All(Actor)).Value;
}
