using CoachOffice.Domain;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Lessons;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Lessons;

/// <summary>A lesson as its page shows it.</summary>
internal sealed record LessonSheet
{
    public required LessonView Kept { get; init; }

    public required IReadOnlyList<SheetSection> Sections { get; init; }

    public required string HeldOn { get; init; }

    public required string Club { get; init; }

    public required string Observations { get; init; }

    public required string Notes { get; init; }

    public required string FrameRate { get; init; }

    /// <summary>The version the person looked at: typed values keep theirs.</summary>
    public required int Version { get; init; }

    /// <summary>The office's own id of this opening of the sheet: sent twice, kept once.</summary>
    public required Guid Send { get; init; }

    /// <summary>Takes of a camera: a device's numbers have no video to speak of.</summary>
    public IReadOnlyList<Take> Filmed => [.. Kept.Takes.Where(t => t.View != View.Device)];

    public static LessonSheet Of(LessonView view, SheetInput? typed, Guid send) => new()
    {
        Send = typed?.Send ?? send,
        Kept = view,
        Sections = [.. view.Sheet.GroupBy(g => g.View).OrderBy(g => g.Key).Select(g => Section(g, typed))],
        HeldOn = typed?.HeldOn ?? DayEntry.Text(view.Heading.HeldOn),
        Club = typed?.Club ?? Terms.Of(view.Heading.Club),
        Observations = typed?.Observations ?? view.Observations,
        Notes = typed?.Notes ?? view.Notes,
        FrameRate = typed?.FrameRate ?? Common(view),
        Version = typed?.Version ?? view.Version,
    };

    private static SheetSection Section(IGrouping<View, SheetGroup> view, SheetInput? typed) =>
        new(view.Key, [.. view.OrderBy(g => g.Moment).Select(g => new SheetMoment(g.Moment, [.. g.Fields.Select(f => typed is null ? SheetRow.Kept(f) : SheetRow.Typed(f, typed))]))]);

    /// <summary>The frame rate most readings of the lesson share.</summary>
    private static string Common(LessonView view) =>
        view.Sheet.SelectMany(g => g.Fields).Where(f => f.FrameRate is not null).GroupBy(f => f.FrameRate!.Value).OrderByDescending(g => g.Count()).Select(g => g.Key)
            .FirstOrDefault() is var rate and > 0 ? rate.ToString(System.Globalization.CultureInfo.InvariantCulture) : "";
}

/// <summary>All that is read from one view.</summary>
internal sealed record SheetSection(View View, IReadOnlyList<SheetMoment> Moments)
{
    public string Anchor => Terms.Of(View);

    /// <summary>Some of it can be read as a line's angle from the ground.</summary>
    public bool TakesAsRead => Moments.Any(m => m.Rows.Any(r => r.Field.TakesAsRead));

    public int Filled => Moments.Sum(m => m.Rows.Count(r => r.Text.Length > 0));
}

/// <summary>All that is read at one moment.</summary>
internal sealed record SheetMoment(Moment Moment, IReadOnlyList<SheetRow> Rows);
