using CoachOffice.Domain;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings.SetUp;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Bookings.SetUp;

/// <summary>One offering, or a new one.</summary>
[Authorize(Policy = OfficePolicies.Own)]
public sealed class OfferingModel(ReadOfferingForm read, KeepOffering keep, ArchiveOffering archive) : OfficePage
{
    private const string List = "/settings/offerings";

    [BindProperty(SupportsGet = true)]
    public Guid? Id { get; set; }

    [BindProperty]
    public OfferingFields Input { get; set; } = new();

    public OfferingFormView View { get; private set; } = null!;

    private OfferingId? Offering => Id is { } id ? OfferingId.From(id) : null;

    public async Task<IActionResult> OnGetAsync()
    {
        if (!await Look()) return NotFound();
        Input = View.Kept is { } kept ? OfferingFields.Of(kept, View.Currency) : OfferingFields.Suggested(View);
        return Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        if (!await Look()) return NotFound();
        var details = Input.Read(View.Currency);
        if (!details.TryGet(out var read)) return Refuse(details.Refusals);
        var kept = await keep.As(new OfferingForm { Id = Offering, Version = Input.Version, Details = read }, Actor);
        if (kept.Succeeded) return Done(List, $"{read.Name.Trim()} is kept. What is booked keeps its price and length.");
        if (kept.Refusals[0].Code == Clash.Code && await Look()) Input.Version = View.Kept!.Version;
        return Refuse(kept.Refusals);
    }

    public Task<IActionResult> OnPostArchiveAsync() => Set(archived: true);

    public Task<IActionResult> OnPostRestoreAsync() => Set(archived: false);

    private async Task<IActionResult> Set(bool archived)
    {
        if (Offering is not { } id || !await Look()) return NotFound();
        var put = await archive.Set(id, archived, Actor);
        if (!put.Succeeded) return Refuse(put.Refusals);
        return archived ? Done(List, "Archived: it cannot be booked any more.", $"{OfficeLinks.To(id)}?handler=Restore") : Done(OfficeLinks.To(id), "Brought back.");
    }

    private async Task<bool> Look()
    {
        if (await read.For(Offering) is not { } view) return false;
        View = view;
        return true;
    }
}
