using CoachOffice.UseCases.Access;

namespace CoachOffice.Web.Features.Plans.Private;

/// <summary>The number to call, and nothing else.</summary>
public sealed class UrgentModel(ReadPractice practice) : LinkPage
{
    public string Number { get; private set; } = "112";

    public async Task OnGetAsync() => Number = (await practice.Now())?.EmergencyNumber is { Length: > 0 } number ? number : Number;
}
