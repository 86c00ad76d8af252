using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Rulebook;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Rulebook;

public sealed class IndexModel(RulebookPages pages) : BookPage(pages)
{
    private const int MostFound = 12;

    /// <summary>What somebody asks about, in their words.</summary>
    [BindProperty(SupportsGet = true)]
    public string? About { get; set; }

    /// <summary>Every fault the book knows.</summary>
    internal IReadOnlyList<FaultId> Faults { get; private set; } = [];

    /// <summary>Those that are asked about.</summary>
    internal IReadOnlyList<FaultId> Found { get; private set; } = [];

    public async Task<IActionResult> OnGetAsync()
    {
        if (await Open() is { } gone) return gone;
        var ranged = View.Book.Ranges.Select(r => r.Measure).ToHashSet();
        Faults =
        [
            .. from measure in View.Book.Measures
               where ranged.Contains(measure.Id)
               from side in new[] { Side.Low, Side.High }
               where !measure.NoFaultSides.Contains(side)
               select new FaultId(measure.Id, side),
        ];
        About = string.IsNullOrWhiteSpace(About) ? null : About.Trim();
        if (About is null) return Page();
        Found = [.. Faults.Where(IsAskedFor).Take(MostFound)];
        return Found is [var only] ? LocalRedirect($"/rulebook/faults/{only}{Query}") : Page();
    }

    private bool IsAskedFor(FaultId fault)
    {
        var name = MeasureWords.Of(fault, View.Book);
        return About!.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries).All(word => name.Contains(word, StringComparison.OrdinalIgnoreCase));
    }
}
