using CoachOffice.Domain;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Lessons;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Lessons;

/// <summary>The lesson sheet as posted, everything as typed; the fields of a measure are named by its id.</summary>
public sealed class SheetInput
{
    public int Version { get; set; }

    /// <summary>The office's own id of the sheet as it was opened.</summary>
    public Guid? Send { get; set; }

    /// <summary>The reading sheet shown; empty for every measure.</summary>
    public string? SheetKey { get; set; }

    /// <summary>A measure asked for besides.</summary>
    public string? Also { get; set; }

    /// <summary>Only for grading while one types: whose age, height and goal the bands follow.</summary>
    public Guid StudentId { get; set; }

    public string? HeldOn { get; set; }

    public string? Club { get; set; }

    public string? Kind { get; set; }

    public string? Observations { get; set; }

    public string? Notes { get; set; }

    /// <summary>Frames a second of the lesson's video, for every measure that names none of its own.</summary>
    public string? FrameRate { get; set; }

    [ModelBinder(Name = "readings")]
    public Dictionary<string, string?> Readings { get; set; } = [];

    [ModelBinder(Name = "units")]
    public Dictionary<string, string?> Units { get; set; } = [];

    [ModelBinder(Name = "instruments")]
    public Dictionary<string, string?> Instruments { get; set; } = [];

    [ModelBinder(Name = "frame-rates")]
    public Dictionary<string, string?> FrameRates { get; set; } = [];

    [ModelBinder(Name = "as-read")]
    public Dictionary<string, string?> AsRead { get; set; } = [];

    internal Outcome<LessonForm> ToForm()
    {
        var refusals = new List<Refusal>();
        if (DayEntry.Read(HeldOn) is null) refusals.Add(DayEntry.Refusal(nameof(HeldOn)));
        if (!Terms.TryParse<Club>(Club, out var club)) refusals.Add(new("club-not-known", "Pick one of the five clubs.", nameof(Club)));
        if (refusals.Count > 0) return Outcome<LessonForm>.Refused(refusals);
        return new LessonForm
        {
            Heading = new LessonHeading(DayEntry.Read(HeldOn)!.Value, club, Terms.TryParse<LessonKind>(Kind, out var kind) ? kind : LessonKind.Lesson),
            Sheet = SheetKey ?? "",
            Send = Send,
            Entries = Entries(),
            Observations = Observations ?? "",
            Notes = Notes ?? "",
        };
    }

    /// <summary>Measures that must stand on the page whatever the sheet says.</summary>
    internal IReadOnlyList<string> Filled() => [.. Readings.Where(r => !string.IsNullOrWhiteSpace(r.Value)).Select(r => r.Key), .. Also is { Length: > 0 } also ? [also] : Array.Empty<string>()];

    internal IReadOnlyList<MeasureEntry> Entries() => [.. Readings.Where(r => !string.IsNullOrWhiteSpace(r.Value)).Select(r => Entry(r.Key, r.Value!))];

    private MeasureEntry Entry(string measure, string text)
    {
        var instrument = Terms.TryParse<Instrument>(Instruments.GetValueOrDefault(measure), out var named) ? named : (Instrument?)null;
        var own = FrameRates.GetValueOrDefault(measure);
        return new MeasureEntry
        {
            Measure = measure,
            Text = text,
            Unit = Units.GetValueOrDefault(measure),
            AsRead = AsRead.ContainsKey(measure),
            Instrument = instrument,
            FrameRate = (string.IsNullOrWhiteSpace(own) && instrument is null or Instrument.Video ? FrameRate : own) ?? "",
        };
    }
}
