using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Measuring.Again;
using CoachOffice.Web.Features.Lessons;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Measuring;

/// <summary>A take read again, without sight of what was read first.</summary>
[Authorize(OfficePolicies.Teach)]
public sealed class SecondReadingModel(SecondReadingPage page, RecordSecondReading record) : OfficePage
{
    internal SecondReadingView View { get; private set; } = null!;

    [BindProperty]
    public SheetInput Sheet { get; set; } = new();

    public async Task<IActionResult> OnGetAsync(Guid id) => await Load(id) ? Page() : NotFound();

    public async Task<IActionResult> OnPostAsync(Guid id)
    {
        var read = await record.As(id, Sheet.Version, Sheet.Entries(), Actor);
        if (read.TryGet(out var count)) return Done("/how-sure", count == 1 ? "One measure is read twice now." : $"{count} measures are read twice now.");
        if (read.Refusals.Any(r => r.Code == Clash.Code)) return Done("/how-sure", read.Refusals[0].Sentence);
        return await Load(id) ? Refuse(read.Refusals, "") : NotFound();
    }

    internal string? Typed(string measure) => Sheet.Readings.GetValueOrDefault(measure);

    internal string? Wrong(string measure) => Refusals.FirstOrDefault(r => r.Field == UseCases.Lessons.ReadingEntry.FieldOf(measure))?.Sentence;

    private async Task<bool> Load(Guid id)
    {
        if (await page.Of(id) is not { } view) return false;
        View = view;
        return true;
    }
}
