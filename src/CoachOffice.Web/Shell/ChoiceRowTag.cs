using System.Text.Encodings.Web;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using Microsoft.AspNetCore.Mvc.Rendering;
using Microsoft.AspNetCore.Mvc.ViewFeatures;
using Microsoft.AspNetCore.Razor.TagHelpers;

namespace CoachOffice.Web.Shell;

/// <summary><c>&lt;choice-row for="Input.Level" label="Level" words="Level" /&gt;</c>: one of a closed list of words.</summary>
[HtmlTargetElement("choice-row", TagStructure = TagStructure.WithoutEndTag)]
public sealed class ChoiceRowTag : TagHelper
{
    private static readonly Dictionary<string, IReadOnlyList<string>> Lists = new(StringComparer.Ordinal)
    {
        [nameof(Hand)] = Terms.All<Hand>(),
        [nameof(Level)] = Terms.All<Level>(),
        [nameof(Room)] = Terms.All<Room>(),
        [nameof(Policy)] = Terms.All<Policy>(),
        [nameof(UnitSystem)] = Terms.All<UnitSystem>(),
    };

    public required ModelExpression For { get; set; }

    public required string Label { get; set; }

    /// <summary>Name of the list.</summary>
    public required string Words { get; set; }

    public string? Hint { get; set; }

    [ViewContext]
    [HtmlAttributeNotBound]
    public ViewContext ViewContext { get; set; } = null!;

    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        var id = For.Name.Replace('.', '_');
        output.TagName = "div";
        output.TagMode = TagMode.StartTagAndEndTag;
        output.Attributes.SetAttribute("class", "field narrow");
        output.Content.AppendHtml($"<label for=\"{id}\">").Append(Label).AppendHtml("</label>");
        if (Hint is not null) output.Content.AppendHtml($"<p class=\"hint\" id=\"{id}-hint\">").Append(Hint).AppendHtml("</p>");
        output.Content.AppendHtml($"<select id=\"{id}\" name=\"{For.Name}\"{(Hint is null ? "" : $" aria-describedby=\"{id}-hint\"")}>");
        foreach (var word in Lists[Words]) output.Content.AppendHtml(Option(word));
        output.Content.AppendHtml("</select>");
        if (Error is { } error) output.Content.AppendHtml("<p class=\"error\">").Append(error).AppendHtml("</p>");
    }

    private string Option(string word)
    {
        var text = HtmlEncoder.Default.Encode(PlainWords.Of(word));
        return $"<option value=\"{word}\"{(word == For.Model as string ? " selected" : "")}>{text}</option>";
    }

    private string? Error => ViewContext.ModelState.TryGetValue(For.Name, out var entry) && entry.Errors.Count > 0 ? entry.Errors[0].ErrorMessage : null;
}
