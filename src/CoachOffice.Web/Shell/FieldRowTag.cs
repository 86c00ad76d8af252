using CoachOffice.Web.Shell.Components;
using Microsoft.AspNetCore.Html;
using Microsoft.AspNetCore.Mvc.Rendering;
using Microsoft.AspNetCore.Mvc.ViewFeatures;
using Microsoft.AspNetCore.Razor.TagHelpers;

namespace CoachOffice.Web.Shell;

/// <summary><c>&lt;field-row for="Input.Name" label="Name" /&gt;</c>: a <see cref="FieldRow"/> with the value as typed (or as saved) and the model's own error.</summary>
[HtmlTargetElement("field-row", TagStructure = TagStructure.WithoutEndTag)]
public sealed class FieldRowTag(IHtmlHelper html) : TagHelper
{
    public required ModelExpression For { get; set; }

    public required string Label { get; set; }

    public string Type { get; set; } = "text";

    public string? Unit { get; set; }

    public string? Hint { get; set; }

    public bool Optional { get; set; }

    public string? Autocomplete { get; set; }

    [HtmlAttributeName("inputmode")]
    public string? InputMode { get; set; }

    public string? List { get; set; }

    [HtmlAttributeName("maxlength")]
    public int? MaxLength { get; set; }

    public string? Class { get; set; }

    [ViewContext]
    [HtmlAttributeNotBound]
    public ViewContext ViewContext { get; set; } = null!;

    public override async Task ProcessAsync(TagHelperContext context, TagHelperOutput output)
    {
        ((IViewContextAware)html).Contextualize(ViewContext);
        var row = await html.RenderComponentAsync<FieldRow>(RenderMode.Static, Parameters());
        output.TagName = null;
        output.Content.SetHtmlContent(row);
    }

    private Dictionary<string, object?> Parameters() => new(StringComparer.Ordinal)
    {
        [nameof(FieldRow.Label)] = Label,
        [nameof(FieldRow.Name)] = For.Name,
        [nameof(FieldRow.Value)] = Type == "password" ? null : Typed ?? For.Model?.ToString(),
        [nameof(FieldRow.Type)] = Type,
        [nameof(FieldRow.Unit)] = Unit,
        [nameof(FieldRow.Hint)] = Hint,
        [nameof(FieldRow.Error)] = Error,
        [nameof(FieldRow.Optional)] = Optional,
        [nameof(FieldRow.Autocomplete)] = Autocomplete,
        [nameof(FieldRow.InputMode)] = InputMode,
        [nameof(FieldRow.List)] = List,
        [nameof(FieldRow.MaxLength)] = MaxLength,
        [nameof(FieldRow.Class)] = Class,
    };

    private string? Typed => ViewContext.ModelState.TryGetValue(For.Name, out var entry) ? entry.AttemptedValue : null;

    private string? Error => ViewContext.ModelState.TryGetValue(For.Name, out var entry) && entry.Errors.Count > 0 ? entry.Errors[0].ErrorMessage : null;
}
