using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Lessons.Sheets;
using CoachOffice.UseCases.Plans;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Lessons;

/// <summary>A coach's reading sheets: what is read for a purpose, so that the lesson's page shows just that.</summary>
[Authorize(OfficePolicies.Teach)]
public sealed class SheetsModel(ListSheets list, KeepSheet keep, DropSheet drop, PlanBooks books) : OfficePage
{
    /// <summary>Own sheet to change, or a shipped one to begin from.</summary>
    [BindProperty(SupportsGet = true)]
    public string? From { get; set; }

    [BindProperty]
    public Guid? Id { get; set; }

    [BindProperty]
    public int Version { get; set; }

    /// <summary>As typed.</summary>
    [BindProperty]
    public string? Name { get; set; }

    [BindProperty]
    public List<string> Measures { get; set; } = [];

    internal IReadOnlyList<SheetChoice> Sheets { get; private set; } = [];

    internal IReadOnlyList<IGrouping<(View View, Moment Moment), Measure>> Groups { get; private set; } = [];

    internal string NameOf(MeasureId measure) => Groups.SelectMany(g => g).FirstOrDefault(m => m.Id == measure)?.Name ?? measure.Value;

    public async Task<IActionResult> OnGetAsync()
    {
        await Load();
        if (From is { Length: > 0 } && Sheets.FirstOrDefault(s => s.Key == From) is { } sheet)
            (Id, Version, Name, Measures) = (sheet.Id, sheet.Version, sheet.Id is null ? "" : sheet.Name, [.. sheet.Measures.Select(m => m.Value)]);
        return Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        var kept = await keep.As(new SheetForm { Id = Id, Version = Version, Name = Name ?? "", Measures = Measures }, Actor);
        if (kept.Succeeded) return Done("/sheets", $"The sheet '{Name?.Trim()}' is kept.");
        await Load();
        return Refuse(kept.Refusals, "");
    }

    public async Task<IActionResult> OnPostDropAsync(Guid sheet)
    {
        var dropped = await drop.Of(sheet, Actor);
        if (dropped.TryGet(out var name)) return Done("/sheets", $"The sheet '{name}' is taken out.");
        await Load();
        return Refuse(dropped.Refusals, "");
    }

    private async Task Load()
    {
        Sheets = await list.For(Actor);
        Groups = [.. (await books.InForce()).Measures.GroupBy(m => (m.View, m.Moment)).OrderBy(g => g.Key.View).ThenBy(g => g.Key.Moment)];
    }
}
