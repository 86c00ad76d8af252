using System.Text.Encodings.Web;
using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Html;

namespace CoachOffice.Web.Features.Plans;

/// <summary>Why a coach departs from the draft: a coded reason and a comment. Written as text because every drill of a draft has these fields.</summary>
internal static class ReasonFields
{
    private static readonly string Options = string.Concat(Enum.GetValues<EditReason>().Select(r => Option(r, chosen: false)));

    /// <param name="key">What makes the fields' ids unique; letters, digits and hyphens.</param>
    /// <param name="reason">As posted, or null.</param>
    /// <param name="comment">As typed, or null.</param>
    public static IHtmlContent Html(string key, string? reason, string? comment)
    {
        var options = reason is null ? Options : string.Concat(Enum.GetValues<EditReason>().Select(r => Option(r, Terms.Of(r) == reason)));
        var value = comment is null ? "" : $" value=\"{HtmlEncoder.Default.Encode(comment)}\"";
        return new HtmlString($"""
            <div class="reason">
                <div class="field"><label for="reason-{key}">Why</label>
                    <select id="reason-{key}" name="Reason" required>
                        <option value="">Pick a reason</option>{options}
                    </select></div>
                <div class="field"><label for="comment-{key}">In your words (optional)</label><input id="comment-{key}" name="Comment" maxlength="400"{value} /></div>
            </div>
            """);
    }

    private static string Option(EditReason reason, bool chosen) =>
        $"<option value=\"{Terms.Of(reason)}\"{(chosen ? " selected=\"selected\"" : "")}>{HtmlEncoder.Default.Encode(PlanWords.Of(reason))}</option>";
}
