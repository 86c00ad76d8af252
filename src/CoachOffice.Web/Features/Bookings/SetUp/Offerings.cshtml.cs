using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings.SetUp;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;

namespace CoachOffice.Web.Features.Bookings.SetUp;

[Authorize(Policy = OfficePolicies.Own)]
public sealed class OfferingsModel(ReadOfferings read, ReadSetUp setUp, ReadPractice practice) : OfficePage
{
    public IReadOnlyList<Offering> All { get; private set; } = [];

    public SetUpState SetUp { get; private set; } = new(true, true, true);

    internal Currency Currency { get; private set; } = Currency.Of("EUR");

    public async Task OnGetAsync()
    {
        (All, SetUp) = (await read.All(), await setUp.Now());
        Currency = Currency.Of((await practice.Now())!.Currency);
    }
}
