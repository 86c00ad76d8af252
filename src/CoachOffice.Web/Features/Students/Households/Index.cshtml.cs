using CoachOffice.UseCases.Students.Households;
using CoachOffice.Web.Shell;

namespace CoachOffice.Web.Features.Students.Households;

/// <summary>Payers who pay for more than one student.</summary>
public sealed class IndexModel(ListHouseholds list) : OfficePage
{
    public IReadOnlyList<HouseholdRow> Rows { get; private set; } = [];

    public async Task OnGetAsync() => Rows = await list.Now();
}
