using System.Runtime.CompilerServices;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Html;

namespace CoachOffice.Web.Shell;

/// <summary>What every page links to, under the names that change with the content. Written once for each build of the files: a tag helper a link on every page is a good part of a small page.</summary>
internal sealed class HeadLinks
{
    private static readonly ConditionalWeakTable<ResourceAssetCollection, HeadLinks> Written = [];
    private static readonly HeadLinks Plain = new(static file => file);

    private HeadLinks(Func<string, string> named)
    {
        string[] sheets = ["tokens", "base", "layout", "forms", "parts"];
        First = new HtmlString($"<link rel=\"icon\" href=\"/{named("icon.svg")}\" type=\"image/svg+xml\">" + string.Concat(sheets.Select(s => $"<link rel=\"stylesheet\" href=\"/{named($"css/{s}.css")}\">")));
        Last = new HtmlString($"<link rel=\"stylesheet\" href=\"/{named("css/print.css")}\" media=\"print\"><script type=\"module\" src=\"/{named("js/site.js")}\"></script>");
    }

    /// <summary>Before a page's own.</summary>
    public IHtmlContent First { get; }

    /// <summary>After them.</summary>
    public IHtmlContent Last { get; }

    public static HeadLinks Of(HttpContext context) =>
        context.GetEndpoint()?.Metadata.GetMetadata<ResourceAssetCollection>() is { } files
            ? Written.GetValue(files, static files => new HeadLinks(file => files[file]))
            : Plain;
}
