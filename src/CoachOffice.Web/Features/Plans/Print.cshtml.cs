using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Plans;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using QRCoder;

namespace CoachOffice.Web.Features.Plans;

/// <summary>The student's sheet for the printer. The link is made by a post and shown once: only its hash is kept.</summary>
[Authorize(OfficePolicies.Teach)]
public sealed class PrintModel(PlanSheet sheet, IssuePlanLink issue) : OfficePage
{
    internal PlanSheetView Sheet { get; private set; } = null!;

    /// <summary>The private address, on the one answer that makes it.</summary>
    public string? Address { get; private set; }

    public string? Qr { get; private set; }

    public async Task<IActionResult> OnGetAsync(Guid id) => await Load(id) ?? Page();

    public async Task<IActionResult> OnPostAsync(Guid id)
    {
        var issued = await issue.For(PlanId.From(id), Actor);
        if (!issued.TryGet(out var address)) return await Load(id) ?? Refuse(issued.Refusals, "");
        (Address, Qr) = (address.ToString(), Draw(address));
        return await Load(id) ?? Page();
    }

    private async Task<IActionResult?> Load(Guid id)
    {
        if (await sheet.For(PlanId.From(id)) is not { } view) return NotFound();
        Sheet = view;
        return null;
    }

    private static string Draw(Uri address)
    {
        using var generator = new QRCodeGenerator();
        using var data = generator.CreateQrCode(address.ToString(), QRCodeGenerator.ECCLevel.M);
        using var code = new SvgQRCode(data);
        return code.GetGraphic(4, "#000000", "#ffffff", sizingMode: SvgQRCode.SizingMode.ViewBoxAttribute);
    }
}
