using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Rulebook;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Rulebook;

/// <summary>All the book says of one fault.</summary>
public sealed class FaultModel(RulebookPages pages) : BookPage(pages)
{
    internal FaultId Fault { get; private set; }

    internal Measure Measure { get; private set; } = null!;

    internal IEnumerable<Pattern> Roots => View.Book.Patterns.Where(p => p.Root.Contains(Fault)).OrderBy(p => p.Precedence);

    internal IEnumerable<Pattern> Explained => View.Book.Patterns.Where(p => p.Explains.Contains(Fault) || p.ExplainsIfPresent.Contains(Fault)).OrderBy(p => p.Precedence);

    internal Progression? Ladder => View.Book.For(Fault);

    public async Task<IActionResult> OnGetAsync(string fault)
    {
        if (await Open() is { } gone) return gone;
        if (FaultId.Find(fault) is not { } id || View.Book.Find(id.Measure) is not { } measure) return NotFound();
        (Fault, Measure) = (id, measure);
        return Page();
    }
}
