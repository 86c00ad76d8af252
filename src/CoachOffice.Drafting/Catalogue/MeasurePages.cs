using System.Globalization;
using System.Text;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Words;

namespace CoachOffice.Drafting.Catalogue;

/// <summary>Measures and their ranges.</summary>
internal static class MeasurePages
{
    public static void Write(StringBuilder page, Rulebook book)
    {
        page.Append("\n## What is read\n");
        foreach (var measure in book.Measures) Measure(page, measure);
        page.Append("\n## What is left alone\n\nWhen the ball flies well. By club, in the measure's unit; a range is held against the student's age, stature and level where the lines below say so.\n\n");
        page.Append("| measure | driver | fairway | hybrid | iron | wedge | source |\n|---|---|---|---|---|---|---|\n");
        var ranged = book.Measures.Where(m => book.Ranges.Any(r => r.Measure == m.Id)).ToList();
        foreach (var measure in ranged) Row(page, book, measure);
        page.Append('\n');
        foreach (var measure in ranged.Where(m => Any(book, m).Card is not null)) page.Append(CultureInfo.InvariantCulture, $"- **{measure.Name}.** {Any(book, measure).Card}\n");
        Adjustments(page, book);
    }

    private static void Measure(StringBuilder page, Measure measure)
    {
        var ways = measure.Negative is null ? $"more means {measure.Positive}" : $"positive {measure.Positive}, negative {measure.Negative}";
        page.Append(CultureInfo.InvariantCulture, $"\n### {measure.Name}\n\n`{measure.Id.Value}`, {measure.Unit.Symbol}, {Terms.Of(measure.View)}, at {Terms.Of(measure.Moment)}; {ways}.");
        page.Append(CultureInfo.InvariantCulture, $" Error: {Sentences.Number(measure.SetupError)} of the set-up, {Sentences.Number(measure.SwingError)} from swing to swing");
        page.Append(measure.Step is { } step ? $"; one step is {Sentences.Number(step)}.\n\n" : "; never graded.\n\n");
        page.Append(measure.HowTo).Append('\n');
    }

    private static void Row(StringBuilder page, Rulebook book, Measure measure)
    {
        page.Append(CultureInfo.InvariantCulture, $"| {measure.Name} ({measure.Unit.Symbol}) |");
        foreach (var club in Enum.GetValues<Club>()) page.Append(CultureInfo.InvariantCulture, $" {Band(book.RangeOf(measure.Id, club))} |");
        page.Append(CultureInfo.InvariantCulture, $" {Source(Any(book, measure).Source)} |\n");
    }

    private static void Adjustments(StringBuilder page, Rulebook book)
    {
        foreach (var rule in book.Adjustments)
        {
            var who = string.Join(", ", new[] { rule.FromAge > 0 ? $"from age {rule.FromAge}" : "", rule.Levels is null ? "" : string.Join(" and ", rule.Levels.Select(l => Terms.Of(l))) }.Where(w => w.Length > 0));
            page.Append(CultureInfo.InvariantCulture, $"- **{book.Find(rule.Measure)!.Name}, {who}:** low edge {rule.LowBy:+0.##;-0.##;0}, high edge {rule.HighBy:+0.##;-0.##;0} ({Source(rule.Source)}).\n");
        }
    }

    /// <summary>"provisional" or the publication.</summary>
    public static string Source(SourceMark source) => source.IsPublished ? source.Text : "provisional";

    private static WantedRange Any(Rulebook book, Measure measure) => book.Ranges.First(r => r.Measure == measure.Id);

    private static string Band(WantedRange? range) => range switch
    {
        null => "none",
        { FromGoal: true } => "goal",
        { Aim: { } aim } => $"{Ends(range.Limits)}, aim {Ends(aim)}",
        _ => Ends(range.Limits),
    };

    private static string Ends(Limits limits) => (limits.Low, limits.High) switch
    {
        ({ } low, { } high) => $"{Sentences.Number(low)} to {Sentences.Number(high)}",
        ({ } low, null) => $"from {Sentences.Number(low)}",
        (null, { } high) => $"up to {Sentences.Number(high)}",
        _ => "any",
    };
}
