using System.Text;
using CoachOffice.Domain;
using CoachOffice.UseCases.Bookings.Calendars.Busy;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.RateLimiting;
using NodaTime;

namespace CoachOffice.Web.Features.Bookings.Calendars;

/// <summary>Busy times from a coach's other calendars: looked at, kept, removed.</summary>
[Authorize(OfficePolicies.Teach)]
[EnableRateLimiting(RateLimits.Uploads)]
[RequestSizeLimit(MostBytes)]
[RequestFormLimits(MultipartBodyLengthLimit = MostBytes)]
public sealed class BusyModel(PreviewBusyFile preview, KeepBusyTimes keep, RemoveBusyTimes remove, ListBusySources list, IDataProtectionProvider protection) : OfficePage
{
    // The form around the file takes a little.
    private const int MostBytes = BusyReader.LargestFile + 64 * 1024;

    internal BusyPreview? Preview { get; private set; }

    internal IReadOnlyList<BusySource> Sources { get; private set; } = [];

    internal DateTimeZone Zone { get; private set; } = DateTimeZone.Utc;

    /// <summary>Such as "12 busy times from 3 events".</summary>
    internal string Times => Preview is null ? "" : $"{Count(Preview.File.Times.Count, "busy time")} from {Count(Preview.File.Events, "event")}";

    [BindProperty]
    public string? Name { get; set; }

    [BindProperty]
    public string? Parcel { get; set; }

    public async Task<IActionResult> OnGetAsync() => await Load() ?? Page();

    public async Task<IActionResult> OnPostAsync(IFormFile? file)
    {
        if (string.IsNullOrWhiteSpace(Name)) return await Again([new("busy-name", "Give the calendar a name.", nameof(Name))]);
        if (await Text(file) is not { } text) return await Again([new("busy-file", "Pick an .ics file of at most 2 MB.", "File")]);
        var found = await preview.Of(text, Actor);
        if (!found.TryGet(out var would)) return await Again(found.Refusals);
        (Preview, Parcel, Name) = (would, Sealed.Pack(would.File.Times), Name.Trim());
        return await Load() ?? Page();
    }

    public async Task<IActionResult> OnPostKeepAsync()
    {
        if (Sealed.Open(Parcel) is not { } times) return await Again([new("busy-late", "More than an hour has passed since the file was looked at. Pick it once more.", "File")]);
        var kept = await keep.From(Name ?? "", times, Actor);
        return kept.TryGet(out var count) ? Done("/calendar/busy", $"{Count(count, "busy time")} kept. Nobody books you then.") : await Again(kept.Refusals);
    }

    public async Task<IActionResult> OnPostRemoveAsync()
    {
        var removed = await remove.Of(Name ?? "", Actor);
        return removed.Succeeded ? Done("/calendar/busy", $"The busy times of {Name} are removed. Bring the file again to have them back.") : await Again(removed.Refusals);
    }

    private BusyParcel Sealed => new(protection, Actor);

    private async Task<IActionResult> Again(IReadOnlyList<Refusal> refusals) => await Load() ?? Refuse(refusals, "");

    private async Task<IActionResult?> Load()
    {
        var found = await list.Of(Actor);
        if (!found.TryGet(out var sources)) return Refuse(found.Refusals, "");
        (Sources, Zone) = (sources.Rows, sources.Zone);
        return null;
    }

    private static async Task<string?> Text(IFormFile? file)
    {
        if (file is null or { Length: 0 or > BusyReader.LargestFile }) return null;
        using var reader = new StreamReader(file.OpenReadStream(), Encoding.UTF8);
        return await reader.ReadToEndAsync();
    }

    private static string Count(int number, string thing) => $"{number:N0} {thing}{(number == 1 ? "" : "s")}";
}
