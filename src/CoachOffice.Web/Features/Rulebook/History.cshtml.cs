using CoachOffice.UseCases;
using CoachOffice.UseCases.Rulebook;
using Microsoft.AspNetCore.Mvc;
using NodaTime;

namespace CoachOffice.Web.Features.Rulebook;

/// <summary>Every edition the practice has had: when, who, why, what changed.</summary>
public sealed class HistoryModel(RulebookPages pages, ListEditions list, ReadRulebookNotice notice, PracticeClock clock) : BookPage(pages)
{
    internal IReadOnlyList<EditionRow> Editions { get; private set; } = [];

    /// <summary>Told to who can do something about it.</summary>
    internal RulebookNotice? Notice { get; private set; }

    internal DateTimeZone Zone { get; private set; } = DateTimeZone.Utc;

    public async Task<IActionResult> OnGetAsync()
    {
        if (await Open() is { } gone) return gone;
        (Editions, Zone) = (await list.Now(), await clock.Zone());
        Notice = MayEdit ? await notice.Now() : null;
        return Page();
    }
}
