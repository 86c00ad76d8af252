using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Measuring.Landmarks;
using CoachOffice.Domain.Media;

namespace CoachOffice.UseCases.Media;

/// <summary>What has to hold of what is said and marked on a still.</summary>
public static class StillCheck
{
    /// <summary>So many filmed swings a lesson has at most.</summary>
    internal const int MostSwings = 30;

    private const double MostOffSquare = 45;
    private const double ShortestKnown = 5;
    private const double LongestKnown = 1000;

    /// <summary>Moments and views from which anything is read.</summary>
    public static IReadOnlyList<(View View, Moment Moment)> Readable { get; } = [.. PictureMeasures.All.SelectMany(m => new[] { (m.View, m.Moment), (m.View, m.Against ?? m.Moment) }).Distinct().OrderBy(x => x)];

    /// <summary>Why a still cannot show this, or null.</summary>
    public static Refusal? Of(StillShows shows)
    {
        ArgumentNullException.ThrowIfNull(shows);
        if (!Readable.Contains((shows.View, shows.Moment)))
            return new("still-shows", "Nothing is read from that view at that moment: pick address, top, lead arm level or impact seen face-on, or address, lead arm level or impact seen down the line.", nameof(shows.Moment));
        return shows.Swing is >= 1 and <= MostSwings ? null : new("still-swing", $"Number the swing from 1 to {MostSwings}.", nameof(shows.Swing));
    }

    /// <summary>Everything that is wrong with marks on a still.</summary>
    public static IEnumerable<Refusal> Of(StillMarks marks, MediaItem still)
    {
        ArgumentNullException.ThrowIfNull(marks);
        ArgumentNullException.ThrowIfNull(still);
        if (marks.OffSquareDegrees is not (>= 0 and <= MostOffSquare)) yield return new("still-off-square", $"Say how far the camera may have stood off square in degrees, 0 to {MostOffSquare}.", nameof(marks.OffSquareDegrees));
        if (marks.KnownLengthCm is { } length && length is not (>= ShortestKnown and <= LongestKnown)) yield return new("still-known-length", $"A known length has {ShortestKnown} to {LongestKnown} cm; a longer one is surer.", nameof(marks.KnownLengthCm));
        if (marks.Marks.DistinctBy(m => m.Landmark).Count() < marks.Marks.Count) yield return new("still-mark-twice", "A point is marked twice; take the page again.");
        foreach (var mark in marks.Marks.Where(m => !IsInside(m.At, still)))
            yield return new("still-mark-outside", $"{Named(mark.Landmark)} lies outside the picture of {still.Width} by {still.Height} pixels.", $"x[{Terms.Of(mark.Landmark)}]");
        if (IsShort(marks, Landmark.PlumbTop, Landmark.PlumbBottom)) yield return new("still-plumb-short", "The two ends of the plumb line lie too near to each other to say which way is up; mark them further apart.", $"x[{Terms.Of(Landmark.PlumbBottom)}]");
        if (IsShort(marks, Landmark.LengthStart, Landmark.LengthEnd)) yield return new("still-length-short", "The two ends of the known length lie too near to each other to be a scale; mark them further apart.", $"x[{Terms.Of(Landmark.LengthEnd)}]");
    }

    /// <summary>A landmark's name where no page has a better one.</summary>
    public static string Named(Landmark landmark)
    {
        var word = Terms.Of(landmark).Replace('-', ' ');
        return char.ToUpperInvariant(word[0]) + word[1..];
    }

    private static bool IsInside(Pixel at, MediaItem still) => at.X >= 0 && at.Y >= 0 && at.X <= still.Width && at.Y <= still.Height;

    private static bool IsShort(StillMarks marks, Landmark one, Landmark other) =>
        marks.At(one) is { } from && marks.At(other) is { } to && (to - from).Length < PictureReadings.ShortestLine;
}
