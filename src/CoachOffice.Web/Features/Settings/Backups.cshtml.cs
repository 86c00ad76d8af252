using CoachOffice.Domain.Safekeeping;
using CoachOffice.UseCases;
using CoachOffice.UseCases.Safekeeping;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using NodaTime;

namespace CoachOffice.Web.Features.Settings;

/// <summary>How backups stand, and one at once.</summary>
[Authorize(Policy = OfficePolicies.Own)]
public sealed class BackupsModel(ReadBackups read, BackupRuns runs, PracticeClock clock) : OfficePage
{
    private const string Address = "/settings/backups";
    private const double Million = 1_000_000;

    public BackupsView View { get; private set; } = null!;

    public DateTimeZone Zone { get; private set; } = DateTimeZone.Utc;

    /// <summary>Whether the practice could be brought back, in a sentence.</summary>
    public string State => runs.IsRunning ? "A backup is being made. Open this page again in a while to see what came of it." : View.Good is { } good
        ? $"The last backup that was tried out and found good is {Age(clock.Now - good.At)} old."
        : "There is no backup yet that was tried out and found good.";

    /// <summary>What happens by itself.</summary>
    public string When => View.Settings.Enabled
        ? $"One is made by itself each day after {View.Settings.Hour:00}:00, and the last {View.Settings.Keep} are kept."
        : "None is made by itself: that is turned off by Office:Backup:Enabled.";

    public Task OnGetAsync() => Look();

    public async Task<IActionResult> OnPostAsync()
    {
        var made = await runs.Begin(Actor);
        if (made is null) return Done(Address, "The backup is being made.");
        if (made.TryGet(out var copy)) return Done(Address, copy.State == SafetyCopyState.Proved ? "A backup was made, tried out and found good." : "The backup failed; nothing else was touched.");
        await Look();
        return Refuse(made.Refusals);
    }

    internal static string Outcome(SafetyCopy copy) => copy.State == SafetyCopyState.Failed
        ? copy.Problem ?? "failed"
        : copy.Absent == 0 ? "found good" : $"found good; {copy.Absent} stills or clips had gone from the office before";

    internal static string Count(SafetyCopy copy, long number) => copy.State == SafetyCopyState.Failed ? "" : number.ToString("N0");

    internal static string Size(SafetyCopy copy) => copy.State == SafetyCopyState.Failed ? "" : $"{copy.Bytes / Million:N1} MB";

    private static string Age(Duration age) => age switch
    {
        _ when age < Duration.FromHours(1) => "less than an hour",
        _ when age < Duration.FromHours(2) => "an hour",
        _ when age < Duration.FromDays(2) => $"{(int)age.TotalHours} hours",
        _ => $"{(int)age.TotalDays} days",
    };

    private async Task Look()
    {
        Zone = await clock.Zone();
        View = (await read.For(Actor)).Value;
    }
}
