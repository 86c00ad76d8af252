using System.Text;
using System.Text.Encodings.Web;
using CoachOffice.Domain;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Html;

namespace CoachOffice.Web.Features.Lessons;

/// <summary>One measure of the sheet: name and band, field, grade, and how it is taken. Written as text because a sheet holds dozens; what is known of the measure itself is written once.</summary>
internal static class RowDrawing
{
    public static IHtmlContent Html(SheetRow row, ISheetPage page)
    {
        var text = new StringBuilder(1600);
        var known = MeasureMarkup.Of(row.Measure);
        var wrong = page.Refusals.FirstOrDefault(r => r.Field == row.Name)?.Sentence;
        text.Append($"<div class=\"measure\" data-measure=\"{row.Key}\"><div class=\"measure-name\"><label for=\"{row.Name}\">{known.Name}</label>");
        text.Append("<p class=\"ghost small quiet\">").Append(Encoded(row.Wanted(page.Units)));
        if (row.Ghost(page.Units) is { } ghost) text.Append(" · ").Append(Encoded(ghost));
        text.Append("</p>");
        if (page.Clashes && row.Text != row.Field.Text) text.Append($"<p class=\"saved-meanwhile small\">Saved meanwhile: {(row.Field.Text.Length > 0 ? Encoded(row.Field.Text) : "nothing")}</p>");
        text.Append("</div>");
        Entry(text, row, wrong is not null);
        text.Append($"<div class=\"measure-grade\" id=\"grade-{row.Key}\" aria-live=\"polite\">");
        if (wrong is not null) text.Append("<p class=\"error\">").Append(Encoded(wrong)).Append("</p>");
        else if (page.FindingOf(row) is { } finding) text.Append(GradeDrawing.Markup(finding, page.Units));
        text.Append("</div>");
        Taking(text, row, known);
        return new HtmlString(text.Append("</div>\n").ToString());
    }

    private static void Entry(StringBuilder text, SheetRow row, bool isWrong)
    {
        var (key, unit) = (row.Key, Encoded(row.Field.Unit.Symbol));
        text.Append($"<div class=\"measure-entry\"><div class=\"with-unit\"><input id=\"{row.Name}\" name=\"{row.Name}\" value=\"{Encoded(row.Text)}\" inputmode=\"decimal\" autocomplete=\"off\" enterkeyhint=\"next\" data-reading");
        if (isWrong) text.Append(" aria-invalid=\"true\"");
        text.Append($" aria-describedby=\"unit-{key} grade-{key}\"><span class=\"unit\" id=\"unit-{key}\">{unit}</span><input type=\"hidden\" name=\"units[{key}]\" value=\"{unit}\"></div>");
        if (row.Field.TakesAsRead) text.Append($"<label class=\"choice small\"><input type=\"checkbox\" name=\"as-read[{key}]\" value=\"yes\"{(row.AsRead ? " checked" : "")}> as read from the ground</label>");
        text.Append("</div>");
    }

    private static void Taking(StringBuilder text, SheetRow row, MeasureMarkup known)
    {
        var key = row.Key;
        text.Append(known.How).Append($"<div class=\"field\"><label for=\"instrument-{key}\">Taken with</label><select id=\"instrument-{key}\" name=\"instruments[{key}]\">");
        foreach (var instrument in row.Instruments)
        {
            var word = Terms.Of(instrument);
            text.Append($"<option value=\"{word}\"{(word == row.Instrument ? " selected" : "")}>{MeasureWords.Of(instrument)}</option>");
        }

        text.Append($"</select></div><div class=\"field\"><label for=\"rate-{key}\">Frames a second</label><input id=\"rate-{key}\" name=\"frame-rates[{key}]\" value=\"{Encoded(row.FrameRate)}\" inputmode=\"decimal\" autocomplete=\"off\" placeholder=\"as above\"></div></div></details>");
    }

    private static string Encoded(string text) => text.Length == 0 ? "" : HtmlEncoder.Default.Encode(text);
}
