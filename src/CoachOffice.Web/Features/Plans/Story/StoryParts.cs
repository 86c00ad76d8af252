using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Html;
using Microsoft.AspNetCore.Mvc.Rendering;

namespace CoachOffice.Web.Features.Plans.Story;

/// <summary>Parts of the page that say only what the story says: written once, the same for everyone.</summary>
internal static class StoryParts
{
    /// <param name="html">The page's.</param>
    /// <param name="story">Keeps the part.</param>
    /// <param name="part">The partial view; it may hold nothing of the person, the plan's state or the request.</param>
    /// <param name="model">What it shows; the story when null.</param>
    /// <param name="place">Which of several.</param>
    public static async Task<IHtmlContent> Told(this IHtmlHelper html, DraftStory story, string part, object? model = null, string place = "")
    {
        if (story.Written.TryGetValue(part + place, out var known)) return known;
        await using var text = new StringWriter();
        (await html.PartialAsync(part, model ?? story)).WriteTo(text, HtmlEncoder.Default);
        return story.Written[part + place] = new HtmlString(text.ToString());
    }
}
