using CoachOffice.Domain;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>Where an entry is edited, and which entry an address means.</summary>
internal static class EntryAddress
{
    public static string Of(EntryId id) => $"{New(id.Kind)}/{Uri.EscapeDataString(id.Key)}";

    public static string New(EntryKind kind) => $"/rulebook/edit/{Terms.Of(kind)}";

    /// <summary>False when there is no such kind; the id is null for a new entry.</summary>
    public static bool TryRead(string? word, string? key, out EntryKind kind, out EntryId? id)
    {
        id = null;
        if (!Terms.TryParse(word, out kind)) return false;
        if (kind is EntryKind.Name or EntryKind.Dosage) id = new EntryId(kind, Terms.Of(kind));
        else if (!string.IsNullOrEmpty(key)) id = new EntryId(kind, key);
        return true;
    }

    /// <summary>"Head against the shade" gives <c>head-against-the-shade</c>.</summary>
    public static string IdFor(string name) => string.Join('-', string.Concat(name.Normalize(System.Text.NormalizationForm.FormD)
        .Where(c => char.IsAscii(c)).Select(c => char.IsAsciiLetterOrDigit(c) ? char.ToLowerInvariant(c) : ' ')).Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
