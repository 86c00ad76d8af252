using System.Globalization;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Measuring.Landmarks;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Media;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Media;

/// <summary>A still as posted, everything as typed; the two numbers of a point are named by it.</summary>
public sealed class StillInput
{
    public int Version { get; set; }

    public int LessonVersion { get; set; }

    public string? Shows { get; set; }

    public string? Swing { get; set; }

    public string? Toward { get; set; }

    public string? OffSquareDegrees { get; set; }

    public string? KnownLengthCm { get; set; }

    [ModelBinder(Name = "x")]
    public Dictionary<string, string?> X { get; set; } = [];

    [ModelBinder(Name = "y")]
    public Dictionary<string, string?> Y { get; set; } = [];

    /// <summary>Ids of the measures to be put into the sheet.</summary>
    public List<string> Put { get; set; } = [];

    internal static StillInput Of(StillView view, UnitText units)
    {
        var marks = view.Still.Marks ?? new StillMarks();
        return new StillInput
        {
            Version = view.Still.Version,
            LessonVersion = view.LessonVersion,
            Shows = LandmarkWords.Key(view.Shows.View, view.Shows.Moment),
            Swing = view.Shows.Swing.ToString(CultureInfo.InvariantCulture),
            Toward = Terms.Of(marks.Toward),
            OffSquareDegrees = ShownUnits.Number(marks.OffSquareDegrees),
            KnownLengthCm = marks.KnownLengthCm is { } length ? ShownUnits.Number(new Quantity(length, Unit.Centimetre).In(units.ShownIn(Unit.Centimetre)).Value) : "",
            X = marks.Marks.ToDictionary(m => Terms.Of(m.Landmark), m => (string?)ShownUnits.Number(m.At.X)),
            Y = marks.Marks.ToDictionary(m => Terms.Of(m.Landmark), m => (string?)ShownUnits.Number(m.At.Y)),
        };
    }

    internal Outcome<StillForm> ToForm(UnitText units)
    {
        var refusals = new List<Refusal>();
        if (!LandmarkWords.TryRead(Shows, Swing, out var shows)) refusals.Add(LandmarkWords.NotSaid);
        if (!Terms.TryParse<PictureSide>(Toward, out var toward)) refusals.Add(new("still-toward", "Say on which side of the picture the target or the ball lies.", nameof(Toward)));
        var off = Number(OffSquareDegrees, nameof(OffSquareDegrees), "Degrees off square", refusals);
        if (off is null && string.IsNullOrWhiteSpace(OffSquareDegrees)) refusals.Add(new("still-off-square", "Say how far the camera may have stood off square; 5 degrees is a careful guess.", nameof(OffSquareDegrees)));
        var length = Number(KnownLengthCm, nameof(KnownLengthCm), "Known length", refusals);
        var marks = Marks(refusals).ToList();
        if (refusals.Count > 0) return Outcome<StillForm>.Refused(refusals);
        return new StillForm(shows!, new StillMarks
        {
            Toward = toward,
            OffSquareDegrees = off!.Value,
            KnownLengthCm = length is { } known ? new Quantity(known, units.ShownIn(Unit.Centimetre)).In(Unit.Centimetre).Value : null,
            Marks = marks,
        });
    }

    internal double? At(Dictionary<string, string?> side, Landmark landmark) => NumberEntry.One(side.GetValueOrDefault(Terms.Of(landmark))).TryGet(out var number) ? number : null;

    private IEnumerable<Mark> Marks(List<Refusal> refusals)
    {
        foreach (var landmark in Enum.GetValues<Landmark>())
        {
            var word = Terms.Of(landmark);
            var (x, y) = (Number(X.GetValueOrDefault(word), $"x[{word}]", StillCheck.Named(landmark), refusals), Number(Y.GetValueOrDefault(word), $"y[{word}]", StillCheck.Named(landmark), refusals));
            if (x is { } across && y is { } down) yield return new Mark(landmark, new Pixel(across, down));
            else if (string.IsNullOrWhiteSpace(X.GetValueOrDefault(word)) != string.IsNullOrWhiteSpace(Y.GetValueOrDefault(word)))
                refusals.Add(new("still-half-a-point", $"{StillCheck.Named(landmark)}: give both numbers, across and down, or neither.", $"x[{word}]"));
        }
    }

    private static double? Number(string? text, string field, string name, List<Refusal> refusals)
    {
        if (string.IsNullOrWhiteSpace(text)) return null;
        var read = NumberEntry.One(text);
        if (read.TryGet(out var number)) return number;
        refusals.Add(new Refusal("not-a-number", $"{name}: {read.Refusals[0].Sentence}", field));
        return null;
    }
}
