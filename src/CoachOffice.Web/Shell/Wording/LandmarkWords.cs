using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Measuring.Landmarks;
using CoachOffice.UseCases.Media;

namespace CoachOffice.Web.Shell.Wording;

/// <summary>What is marked on a still, said to a person.</summary>
internal static class LandmarkWords
{
    private const string Guide = "Which view and moment it shows, and which swing, has to be said first.";

    public static Refusal NotSaid { get; } = new("still-shows", Guide, "Shows");

    /// <summary>"At the top, face-on".</summary>
    public static string Of(View view, Moment moment) => $"{MeasureWords.Of(moment)}, {(view == View.FaceOn ? "face-on" : "down the line")}";

    /// <summary>A view and a moment as one word of a form.</summary>
    public static string Key(View view, Moment moment) => $"{Terms.Of(view)}/{Terms.Of(moment)}";

    /// <summary>Reads what a form says a still shows.</summary>
    public static bool TryRead(string? key, string? swing, [MaybeNullWhen(false)] out StillShows shows)
    {
        shows = null;
        var parts = (key ?? "").Split('/');
        if (parts.Length != 2 || !Terms.TryParse<View>(parts[0], out var view) || !Terms.TryParse<Moment>(parts[1], out var moment)) return false;
        if (!int.TryParse(swing, NumberStyles.None, CultureInfo.InvariantCulture, out var number)) return false;
        shows = new StillShows(view, moment, number);
        return true;
    }

    public static string Of(Landmark landmark, View view) => landmark switch
    {
        Landmark.PlumbTop => "Plumb line, upper end",
        Landmark.PlumbBottom => "Plumb line, lower end",
        Landmark.LengthStart => "Known length, one end",
        Landmark.LengthEnd => "Known length, other end",
        Landmark.Ball => "Middle of the ball",
        Landmark.LeadHeel => "Inside of the lead heel",
        Landmark.TrailHeel => "Inside of the trail heel",
        Landmark.LeadHip => "Outer edge of the lead hip",
        Landmark.TrailHip => "Outer edge of the trail hip",
        Landmark.Seat => "Rearmost point of the seat",
        Landmark.BeltMiddle => "Middle of the belt",
        Landmark.NeckBase => view == View.FaceOn ? "Notch at the base of the neck" : "Base of the neck, along the back",
        Landmark.HeadMiddle => "Middle of the skull, no cap",
        Landmark.LeadShoulder => "Outer edge of the lead shoulder",
        Landmark.TrailShoulder => "Outer edge of the trail shoulder",
        Landmark.ShaftHigh => "Shaft, at the grip",
        Landmark.ShaftLow => "Shaft, nearer the clubhead",
        Landmark.ClubButt => "Butt of the club",
        Landmark.Thigh => "Thigh, nearest to the butt",
        _ => StillCheck.Named(landmark),
    };

    /// <summary>"Middle of the ball on the still at address"; of the still shown the point alone.</summary>
    public static string Of(MissingMark missing, View view, Moment shown)
    {
        if (missing.Landmark is not { } landmark) return $"a still {Small(MeasureWords.Of(missing.Moment))} from this view";
        var point = landmark switch
        {
            Landmark.PlumbTop or Landmark.PlumbBottom => "plumb line",
            Landmark.LengthStart or Landmark.LengthEnd => "known length, with how long it is",
            _ => Small(Of(landmark, view)),
        };
        return missing.Moment == shown ? point : $"{point}, on the still {Small(MeasureWords.Of(missing.Moment))}";
    }

    private static string Small(string text) => char.ToLowerInvariant(text[0]) + text[1..];
}
