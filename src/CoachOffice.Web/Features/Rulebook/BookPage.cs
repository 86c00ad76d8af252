using CoachOffice.UseCases.Rulebook;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Rulebook;

/// <summary>A page to read in the rulebook: the one in force, or an old plan's by its hash (<c>?book=</c>).</summary>
public abstract class BookPage(RulebookPages pages) : OfficePage
{
    internal RulebookView View { get; private set; } = null!;

    [BindProperty(SupportsGet = true)]
    public string? Book { get; set; }

    /// <summary>Kept on every link while an old book is read.</summary>
    public string Query => View.IsInForce ? "" : $"?book={View.Sha256}";

    /// <summary>True when this reader may change what is shown.</summary>
    public bool MayEdit => View.MayChange && View.IsInForce;

    protected async Task<IActionResult?> Open()
    {
        var found = await pages.Of(string.IsNullOrWhiteSpace(Book) ? null : Book.Trim(), Actor);
        if (!found.TryGet(out var view)) return Refuse(found.Refusals, "");
        View = view;
        return null;
    }
}
