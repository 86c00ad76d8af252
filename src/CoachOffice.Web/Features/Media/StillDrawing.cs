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
    private const double MarkShare = 0.012;
    private const double TextShare = 0.022;

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

    private string Mark(Landmark landmark, int number)
    {
        var longest = Math.Max(view.Still.Width, view.Still.Height);
        var (radius, size) = (longest * MarkShare, longest * TextShare);
        var place = At(landmark) is { } at ? string.Create(CultureInfo.InvariantCulture, $"transform=\"translate({at.X} {at.Y})\"") : "visibility=\"hidden\"";
        return string.Create(CultureInfo.InvariantCulture,
            $"<g class=\"mark\" data-landmark=\"{Terms.Of(landmark)}\" data-name=\"{LandmarkWords.Of(landmark, view.Shows.View)}\" {place}>" +
            $"<circle class=\"under\" r=\"{radius}\"></circle><circle class=\"over\" r=\"{radius}\"></circle><path class=\"under\" d=\"M{-radius / 3} 0H{radius / 3}M0 {-radius / 3}V{radius / 3}\"></path><path class=\"over\" d=\"M{-radius / 3} 0H{radius / 3}M0 {-radius / 3}V{radius / 3}\"></path>" +
            $"<text x=\"{radius * 1.3}\" y=\"{-radius * 0.8}\" font-size=\"{size}\" aria-hidden=\"true\">{number}</text></g>");
    }

    private Pixel? At(Landmark landmark) => input.At(input.X, landmark) is { } x && input.At(input.Y, landmark) is { } y ? new Pixel(x, y) : null;
}
