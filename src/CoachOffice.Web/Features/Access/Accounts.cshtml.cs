using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Access;

[Authorize(Policy = OfficePolicies.Own)]
public sealed class AccountsModel(ListAccounts list, AddAccount add, DisableAccount disable, ResetSecondStep reset) : OfficePage
{
    private const string Here = "/settings/accounts";

    [BindProperty]
    public AccountFields Input { get; set; } = new();

    public IReadOnlyList<AccountRow> Rows { get; private set; } = [];

    /// <summary>The person looking; nobody closes their own account.</summary>
    public AccountId? Self => Actor.Account;

    public Task OnGetAsync() => Look();

    public async Task<IActionResult> OnPostAddAsync()
    {
        if (!Terms.TryParse<Policy>(Input.Policy, out var policy)) return BadRequest();
        var form = new NewAccountForm { DisplayName = Input.DisplayName ?? "", Email = Input.Email ?? "", Password = Input.Password ?? "", Policy = policy };
        var added = await add.For(form, Actor);
        if (added.Succeeded) return Done(Here, $"{form.DisplayName} can sign in now.");
        await Look();
        return Refuse(added.Refusals);
    }

    public async Task<IActionResult> OnPostCloseAsync(Guid id)
    {
        var closed = await disable.Now(AccountId.From(id), Actor);
        if (closed.Succeeded) return Done(Here, "The account is closed; its sessions end within two minutes.");
        await Look();
        return Refuse(closed.Refusals);
    }

    public async Task<IActionResult> OnPostResetAsync(Guid id)
    {
        var off = await reset.Of(AccountId.From(id), Actor);
        if (off.Succeeded) return Done(Here, "The second step is off: the person signs in with the password and sets it up anew.");
        await Look();
        return Refuse(off.Refusals);
    }

    private async Task Look() => Rows = (await list.Now(Actor)).Value;
}
