using CoachOffice.Domain;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Ledger;
using CoachOffice.UseCases.Ledger.Packages;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Ledger;

/// <summary>Sells a package.</summary>
public sealed class SellModel(PayerPage account, SellPackage sell, INewIds ids) : PayerFormPage(account)
{
    /// <summary>Made when the form was shown: sent twice it is one sale.</summary>
    [BindProperty]
    public Guid Entry { get; set; }

    [BindProperty]
    public Guid Offer { get; set; }

    [BindProperty]
    public Guid Student { get; set; }

    public async Task<IActionResult> OnGetAsync()
    {
        if (await Look() is { } answer) return answer;
        Entry = ids.Next();
        (Offer, Student) = (Account.Offers.Count > 0 ? Account.Offers[0].Id.Value : Guid.Empty, Account.Students.Count > 0 ? Account.Students[0].Id.Value : Guid.Empty);
        return Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        if (await Look() is { } answer) return answer;
        if (Entry == Guid.Empty || Offer == Guid.Empty || Student == Guid.Empty) return BadRequest();
        var form = new SaleForm { Id = EntryId.From(Entry), PayerId = Payer, StudentId = StudentId.From(Student), OfferId = PackageOfferId.From(Offer) };
        var sold = await sell.From(form, Actor);
        return sold.Succeeded ? Done(Home, "The package is sold. Lessons booked from now on are taken from it.") : Refuse(sold.Refusals, "");
    }
}
