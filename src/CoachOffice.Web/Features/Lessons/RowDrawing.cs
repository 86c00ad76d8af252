using System.Text.Encodings.Web;
using CoachOffice.Domain;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Html;

namespace CoachOffice.Web.Features.Lessons;

/// <summary>One measure of the sheet: name and band, field, grade, and how it is taken. It writes itself piece by piece, because a sheet holds dozens; what is said of the measure itself is put into words once.</summary>
internal sealed class RowDrawing(SheetRow row, ISheetPage page) : IHtmlContent
{
    private readonly string _key = row.Key;

    public void WriteTo(TextWriter writer, HtmlEncoder encoder)
    {
        ArgumentNullException.ThrowIfNull(writer);
        ArgumentNullException.ThrowIfNull(encoder);
        var known = MeasureMarkup.Of(row.Measure);
        var wrong = page.Refusals.FirstOrDefault(r => r.Field == row.Name)?.Sentence;
        Name(writer, encoder, known);
        Entry(writer, encoder, wrong is not null);
        writer.Put("<div class=\"measure-grade\" id=\"grade-", _key, "\" aria-live=\"polite\">");
        if (wrong is not null) writer.Put("<p class=\"error\">", encoder.Encode(wrong), "</p>");
        else if (page.FindingOf(row) is { } finding) writer.Write(GradeDrawing.Markup(finding, page.Units, page.ApartOf(row)));
        writer.Put("</div>", known.How);
        Taking(writer, encoder);
        writer.Write("</div>\n");
    }

    private void Name(TextWriter writer, HtmlEncoder encoder, MeasureMarkup known)
    {
        writer.Put("<div class=\"measure\" data-measure=\"", _key, "\" data-band=\"", RowBand.Of(row), "\"><div class=\"measure-name\"><label for=\"", row.Name, "\">", known.Name, "</label>");
        writer.Put("<p class=\"ghost small quiet\">", encoder.Encode(row.Wanted(page.Units)));
        if (row.Ghost(page.Units) is { } ghost) writer.Put(" · ", encoder.Encode(ghost));
        writer.Write("</p>");
        if (page.Clashes && row.Text != row.Field.Text) writer.Put("<p class=\"saved-meanwhile small\">Saved meanwhile: ", row.Field.Text.Length > 0 ? encoder.Encode(row.Field.Text) : "nothing", "</p>");
        writer.Write("</div>");
    }

    private void Entry(TextWriter writer, HtmlEncoder encoder, bool isWrong)
    {
        var unit = encoder.Encode(row.Field.Unit.Symbol);
        writer.Put("<div class=\"measure-entry\"><div class=\"with-unit\"><input id=\"", row.Name, "\" name=\"", row.Name, "\" value=\"", encoder.Encode(row.Text));
        if (row.LastTime is { } last) writer.Put("\" placeholder=\"", last);
        writer.Put("\" inputmode=\"decimal\" autocomplete=\"off\" enterkeyhint=\"next\" data-reading", isWrong ? " aria-invalid=\"true\"" : "");
        writer.Put(" aria-describedby=\"unit-", _key, " grade-", _key, "\"><span class=\"unit\" id=\"unit-", _key, "\">", unit, "</span>");
        writer.Put("<input type=\"hidden\" name=\"units[", _key, "]\" value=\"", unit, "\"></div>");
        if (row.Field.TakesAsRead) writer.Put("<label class=\"choice small\"><input type=\"checkbox\" name=\"as-read[", _key, "]\" value=\"yes\"", row.AsRead ? " checked" : "", "> as read from the ground</label>");
        writer.Write("</div>");
    }

    private void Taking(TextWriter writer, HtmlEncoder encoder)
    {
        writer.Put("<div class=\"field\"><label for=\"instrument-", _key, "\">Taken with</label><select id=\"instrument-", _key, "\" name=\"instruments[", _key, "]\">");
        foreach (var instrument in row.Instruments)
        {
            var word = Terms.Of(instrument);
            writer.Put("<option value=\"", word, word == row.Instrument ? "\" selected>" : "\">", MeasureWords.Of(instrument), "</option>");
        }

        writer.Put("</select></div><div class=\"field\"><label for=\"rate-", _key, "\">Frames a second</label><input id=\"rate-", _key, "\" name=\"frame-rates[", _key);
        writer.Put("]\" value=\"", encoder.Encode(row.FrameRate), "\" inputmode=\"decimal\" autocomplete=\"off\" placeholder=\"as above\"></div></div></details>");
    }
}
