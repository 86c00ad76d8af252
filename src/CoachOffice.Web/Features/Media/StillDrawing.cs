using System.Globalization;
using System.Text;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring.Landmarks;
using CoachOffice.UseCases.Media;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Html;

namespace CoachOffice.Web.Features.Media;

/// <summary>A still with its points drawn on it. Every point of the page is there from the start, those not marked yet unseen: the script only moves them.</summary>
internal sealed class StillDrawing(StillView view, IReadOnlyList<Landmark> points, StillInput input)
{
    private const double UsualScreen = 700;

    private static readonly (Landmark From, Landmark To)[] Lines =
    [
        (Landmark.PlumbTop, Landmark.PlumbBottom), (Landmark.LengthStart, Landmark.LengthEnd), (Landmark.LeadHeel, Landmark.TrailHeel), (Landmark.LeadHip, Landmark.TrailHip),
        (Landmark.BeltMiddle, Landmark.NeckBase), (Landmark.LeadShoulder, Landmark.TrailShoulder), (Landmark.LeadElbow, Landmark.LeadWrist), (Landmark.ShaftHigh, Landmark.ShaftLow),
        (Landmark.Ball, Landmark.TrailElbow), (Landmark.ClubButt, Landmark.Thigh),
    ];

    public IHtmlContent Svg()
    {
        var (width, height) = (view.Still.Width, view.Still.Height);
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture, $"<svg id=\"picture\" class=\"picture\" viewBox=\"0 0 {width} {height}\" role=\"group\" aria-label=\"The still with its points\">");
        svg.Append(CultureInfo.InvariantCulture, $"<image href=\"/media/{view.Still.Id.Value}\" width=\"{width}\" height=\"{height}\"></image>");
        foreach (var (from, to) in Lines.Where(l => points.Contains(l.From) && points.Contains(l.To))) svg.Append(Line(from, to));
        for (var i = 0; i < points.Count; i++) svg.Append(Mark(points[i], i + 1));
        return new HtmlString(svg.Append("</svg>").ToString());
    }

    private string Line(Landmark from, Landmark to)
    {
        var (a, b) = (At(from), At(to));
        var ends = a is { } one && b is { } other ? string.Create(CultureInfo.InvariantCulture, $"x1=\"{one.X}\" y1=\"{one.Y}\" x2=\"{other.X}\" y2=\"{other.Y}\"") : "visibility=\"hidden\"";
        var what = $"data-from=\"{Terms.Of(from)}\" data-to=\"{Terms.Of(to)}\" {ends}";
        return $"<line class=\"under\" {what}></line><line class=\"over\" {what}></line>";
    }

    // Drawn in pixels of the screen: the script says how many of the picture one is, until then a usual screen is taken.
    private string Mark(Landmark landmark, int number)
    {
        var scale = Math.Max(view.Still.Width, view.Still.Height) / UsualScreen;
        var (name, seen) = (LandmarkWords.Of(landmark, view.Shows.View), At(landmark));
        var place = string.Create(CultureInfo.InvariantCulture, $"transform=\"translate({seen?.X ?? 0} {seen?.Y ?? 0}) scale({scale})\"");
        return $"<g class=\"mark\" data-landmark=\"{Terms.Of(landmark)}\" data-name=\"{number}, {name}\" {place}{(seen is null ? " visibility=\"hidden\"" : "")}>" +
            "<circle class=\"under\" r=\"9\"></circle><circle class=\"over\" r=\"9\"></circle><path class=\"under\" d=\"M-3 0H3M0 -3V3\"></path><path class=\"over\" d=\"M-3 0H3M0 -3V3\"></path>" +
            $"<text x=\"11\" y=\"-7\" font-size=\"14\">{number}</text></g>";
    }

    private Pixel? At(Landmark landmark) => input.At(input.X, landmark) is { } x && input.At(input.Y, landmark) is { } y ? new Pixel(x, y) : null;
}
