using System.Text;
using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Rulebook;
using CoachOffice.Web.Features.Rulebook.Editing;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Rulebook;

/// <summary>The practice's own rules as a file: taken out, brought in.</summary>
[Authorize(OfficePolicies.Teach)]
public sealed class OwnRulesModel(ExportOwnRules export, ImportOwnRules import, ReadRulebookNotice notice, ListEditions list) : OfficePage
{
    /// <summary>Far more than any practice will write.</summary>
    internal const int MostBytes = 1024 * 1024;

    internal RulebookNotice? Notice { get; private set; }

    internal int Edition { get; private set; }

    /// <summary>What a file that was only looked at would bring.</summary>
    internal AdoptedEdition? Would { get; private set; }

    /// <summary>Says what such a file changes.</summary>
    internal ChangeText Said { get; private set; } = null!;

    [BindProperty]
    public string? Why { get; set; }

    public async Task OnGetAsync() => await Look();

    public async Task<IActionResult> OnGetFileAsync(int? edition)
    {
        var file = await export.Of(edition, Actor);
        return file.TryGet(out var text) ? File(Encoding.UTF8.GetBytes(text), "application/yaml", $"own-rules{(edition is { } number ? $"-{number}" : "")}.yaml") : await Again(file.Refusals);
    }

    public async Task<IActionResult> OnPostAsync(IFormFile? file, int begun, string? look)
    {
        if (await Text(file) is not { } text) return await Again([new("file-missing", $"Choose a .yaml file of at most {MostBytes / 1024} KB, saved as UTF-8.")]);
        var brought = await import.From(new OwnRulesForm(text, Why ?? "", begun, look is not null), Actor);
        if (!brought.TryGet(out var edition)) return await Again(brought.Refusals);
        if (look is null) return Done($"/rulebook/history/{edition.Number}", $"Edition {edition.Number} is in force: new drafts are made by it from now on.");
        Would = edition;
        Said = new ChangeText(edition.Book!, [.. edition.Differences.Select(d => new EntryEdit(d.Change.Id, EntryDeed.Write, d.New ?? d.Old))]);
        await Look();
        return Page();
    }

    private async Task<IActionResult> Again(IReadOnlyList<Refusal> refusals)
    {
        await Look();
        return Refuse(refusals, "");
    }

    private async Task Look()
    {
        Notice = await notice.Now();
        Edition = (await list.Now())[0].Number;
    }

    // What is no text at all is not read as rules.
    private static async Task<string?> Text(IFormFile? file)
    {
        if (file is null || file.Length is 0 or > MostBytes) return null;
        using var bytes = new MemoryStream();
        await file.CopyToAsync(bytes);
        try
        {
            var text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes.ToArray());
            return text.Contains('\0') ? null : text.TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }
}
