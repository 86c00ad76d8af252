using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases;
using CoachOffice.UseCases.Rulebook;
using CoachOffice.Web.Features.Rulebook.Editing;
using Microsoft.AspNetCore.Mvc;
using NodaTime;

namespace CoachOffice.Web.Features.Rulebook;

/// <summary>One edition of the rulebook: what changed from another, by default the one before, and the way back to it.</summary>
public sealed class EditionModel(RulebookPages pages, ListEditions list, CompareEditions compare, GoBackToEdition goBack, PracticeClock clock) : BookPage(pages)
{
    internal EditionRow Edition { get; private set; } = null!;

    internal IReadOnlyList<int> Others { get; private set; } = [];

    /// <summary>Number of the edition it is held against; null for the first alone.</summary>
    internal int? Beside { get; private set; }

    internal IReadOnlyList<EntryDifference> Differences { get; private set; } = [];

    internal DateTimeZone Zone { get; private set; } = DateTimeZone.Utc;

    /// <summary>Says what differs.</summary>
    internal ChangeText Said { get; private set; } = null!;

    [BindProperty]
    public string? Why { get; set; }

    public async Task<IActionResult> OnGetAsync(int number, int? with) => await Look(number, with) ?? Page();

    public async Task<IActionResult> OnPostAsync(int number, int begun)
    {
        var back = await goBack.To(number, begun, Why ?? "", Actor);
        if (back.TryGet(out var edition)) return Done($"/rulebook/history/{edition.Number}", $"Edition {edition.Number} is in force: it says what edition {number} said.");
        return await Look(number, null) ?? Refuse(back.Refusals, "");
    }

    private async Task<IActionResult?> Look(int number, int? with)
    {
        if (await Open() is { } gone) return gone;
        var editions = await list.Now();
        if (editions.FirstOrDefault(e => e.Number == number) is not { } edition) return NotFound();
        (Edition, Others, Zone) = (edition, [.. editions.Select(e => e.Number).Where(n => n != number)], await clock.Zone());
        Beside = with ?? (number > 1 ? number - 1 : null);
        if (Beside is not { } other) return null;
        var found = await compare.Between(other, number);
        if (!found.TryGet(out var differences)) return Refuse(found.Refusals, "");
        Differences = differences;

        // What only one of the two editions holds is named by its text.
        Said = new ChangeText(View.Book, [.. differences.Select(d => new EntryEdit(d.Change.Id, EntryDeed.Write, d.New ?? d.Old))]);
        return null;
    }
}
