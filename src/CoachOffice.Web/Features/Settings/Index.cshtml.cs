using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Settings;

[Authorize(Policy = OfficePolicies.Own)]
public sealed class IndexModel(ReadPractice read, ChangePractice change, IConfiguration configuration) : OfficePage
{
    [BindProperty]
    public PracticeFields Input { get; set; } = new();

    /// <summary>Where messages go, in a sentence.</summary>
    public string MailState { get; private set; } = "";

    public async Task OnGetAsync()
    {
        var practice = await Look();
        Input = new PracticeFields
        {
            Version = practice.Version,
            Name = practice.Name,
            Zone = practice.Zone,
            Currency = practice.Currency,
            Units = Terms.Of(practice.Units),
            EmergencyNumber = practice.EmergencyNumber,
            RequiresSecondFactor = practice.RequiresSecondFactor,
            MailFrom = practice.MailFrom,
            PublicAddress = practice.PublicAddress,
        };
    }

    public async Task<IActionResult> OnPostAsync()
    {
        var saved = await change.To(Input.Version, Details(), Actor);
        if (saved.Succeeded) return Done("/settings", "Saved.");
        TakeNewVersion((await Look()).Version, saved.Refusals);
        return Refuse(saved.Refusals);
    }

    /// <summary>After a clash the next save is made knowing both.</summary>
    private void TakeNewVersion(int version, IReadOnlyList<Refusal> refusals)
    {
        if (refusals[0].Code != Clash.Code) return;
        Input.Version = version;
        ModelState.Remove("Input.Version");
    }

    private PracticeDetails Details() => new()
    {
        Name = Input.Name ?? "",
        Zone = (Input.Zone ?? "").Trim(),
        Currency = (Input.Currency ?? "").Trim().ToUpperInvariant(),
        Units = Terms.TryParse<UnitSystem>(Input.Units, out var units) ? units : UnitSystem.Metric,
        EmergencyNumber = (Input.EmergencyNumber ?? "").Trim(),
        RequiresSecondFactor = Input.RequiresSecondFactor,
        MailFrom = (Input.MailFrom ?? "").Trim(),
        PublicAddress = (Input.PublicAddress ?? "").Trim(),
    };

    private async Task<Practice> Look()
    {
        var practice = await read.Again() ?? throw new InvalidOperationException("An account without a practice.");
        var server = configuration["Office:Mail:Host"];
        MailState = practice.IsDemo ? "This is the demo practice: messages are written into the data folder and never leave this machine."
            : string.IsNullOrEmpty(server) ? "No mail server is set, so messages are written as files into the folder mail of the data folder. Set Office:Mail in office.json to send them."
            : $"Messages go out through {server}.";
        return practice;
    }
}
