using System.Globalization;
using CoachOffice.Domain;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Ledger;
using CoachOffice.UseCases.Ledger.Packages;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Ledger;

/// <summary>A package on the price list: a new one under an id made when the form was shown, or one that is there.</summary>
[Authorize(Policy = OfficePolicies.Own)]
public sealed class OfferModel(ReadPriceList read, AddPackageOffer add, ChangePackageOffer change, INewIds ids) : OfficePage
{
    [BindProperty(SupportsGet = true)]
    public Guid? Id { get; set; }

    /// <summary>Of a new one.</summary>
    [BindProperty]
    public Guid NewId { get; set; }

    [BindProperty]
    public OfferFields Input { get; set; } = new();

    public PriceList List { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync()
    {
        List = await read.Now();
        NewId = ids.Next();
        if (Id is null) return Page();
        if (List.Packages.FirstOrDefault(o => o.Id.Value == Id) is not { } offer) return NotFound();
        Input = Filled(offer);
        return Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        List = await read.Now();
        if ((Id ?? NewId) == Guid.Empty) return NotFound();
        var saved = Id is { } known ? await change.To(PackageOfferId.From(known), Input.Version, Form(), Actor) : await add.From(PackageOfferId.From(NewId), Form(), Actor);
        return saved.Succeeded ? Done(OfficeLinks.Prices, "Saved. What was sold before stays as it was sold.") : Refuse(saved.Refusals);
    }

    private PackageOfferForm Form() => new()
    {
        Name = (Input.Name ?? "").Trim(),
        Lessons = Whole(Input.Lessons),
        Price = Input.Price ?? "",
        TaxPercent = Input.TaxPercent ?? "",
        ValidMonths = string.IsNullOrWhiteSpace(Input.ValidMonths) ? null : Whole(Input.ValidMonths) ?? 0,
        IsShared = Input.IsShared,
        Offerings = [.. Input.Offerings.Where(o => o != Guid.Empty).Select(OfferingId.From)],
    };

    private OfferFields Filled(PackageOffer offer) => new()
    {
        Version = offer.Version,
        Name = offer.Name,
        Lessons = offer.Lessons.ToString(CultureInfo.InvariantCulture),
        Price = new Money(offer.PriceMinor, List.Currency).Amount,
        TaxPercent = TaxEntry.Of(offer.TaxBasisPoints),
        ValidMonths = offer.ValidMonths?.ToString(CultureInfo.InvariantCulture),
        IsShared = offer.IsShared,
        Offerings = [.. offer.Offerings.Select(o => o.Value)],
    };

    private static int? Whole(string? text) => int.TryParse(text?.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
