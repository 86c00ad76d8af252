using System.Collections.Concurrent;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Html;

namespace CoachOffice.Web.Features.Plans.Story;

/// <summary>A stored draft told to a coach with the words of the book it was made by.</summary>
internal sealed class DraftStory(Draft draft, Domain.Plans.Rulebook book, Club club, UnitText units)
{
    public Draft Draft => draft;

    /// <summary>Parts of the page already written, by partial view and place.</summary>
    public ConcurrentDictionary<string, IHtmlContent> Written { get; } = new(StringComparer.Ordinal);

    public Domain.Plans.Rulebook Book => book;

    public UnitText Units => units;

    /// <summary>By view, in the order a coach looks; by moment inside.</summary>
    public IReadOnlyList<SeenView> Seen { get; } = [.. draft.Findings
        .Select(f => Line(f, book, club))
        .GroupBy(l => l.View)
        .OrderBy(g => g.Key)
        .Select(g => new SeenView(g.Key, [.. g.Where(l => l.NeedsALook).OrderBy(l => l.Moment)], [.. g.Where(l => !l.NeedsALook).OrderBy(l => l.Moment)]))];

    public IReadOnlyList<Driver> Drivers { get; } = new DriverTree(draft, book).Roots();

    public IReadOnlyList<OrderLine> Order { get; } = OrderLine.All(draft);

    public TraceText Say { get; } = new(book);

    public string NameOf(FaultId fault) => MeasureWords.Of(fault, book);

    public string NameOf(string measure) => MeasureWords.NameOf(MeasureId.From(measure), book);

    public string DrillName(string drill) => book.Find(Domain.Plans.DrillId.From(drill))?.Name ?? MeasureWords.Sentence(drill);

    public string? PatternName(string? pattern) => pattern is null ? null : book.Find(Domain.Plans.PatternId.From(pattern))?.Name;

    /// <summary>Patterns that fit, or nearly fit, and hold this fault.</summary>
    public IReadOnlyList<DraftTrace> TraceOf(FaultId fault) =>
        [.. draft.Trace.Where(t => (t.Rule.StartsWith("pattern:", StringComparison.Ordinal) || t.Rule.StartsWith("near-miss:", StringComparison.Ordinal))
            && t.Facts.Any(f => f.StartsWith(fault.ToString(), StringComparison.Ordinal)))];

    private static SeenLine Line(DraftFinding finding, Domain.Plans.Rulebook book, Club club)
    {
        var id = MeasureId.From(finding.Measure);
        var measure = book.Find(id);
        var range = book.RangeOf(id, club);
        return new SeenLine
        {
            Finding = finding,
            Name = measure?.Name ?? MeasureWords.Sentence(finding.Measure),
            Unit = Unit.Find(finding.Unit) ?? Unit.Ratio,
            View = measure?.View ?? View.Device,
            Moment = measure?.Moment ?? Moment.Impact,
            Direction = (finding.Value < 0 ? measure?.Negative : measure?.Positive) ?? "",
            Wanted = finding.Grade == Grade.NoRange ? null : new Limits(finding.RangeLow, finding.RangeHigh),
            Aim = range?.Aim,
            Source = range?.Source,
            HowTo = measure?.HowTo ?? "",
        };
    }
}
