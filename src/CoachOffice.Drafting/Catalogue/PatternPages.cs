using System.Globalization;
using System.Text;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Patterns;

namespace CoachOffice.Drafting.Catalogue;

/// <summary>The patterns, in the order in which they win.</summary>
internal static class PatternPages
{
    public static void Write(StringBuilder page, Rulebook book)
    {
        page.Append("\n## Causes\n\nWhere two claim one finding, the one further up wins.\n");
        foreach (var pattern in book.Patterns.OrderBy(p => p.Precedence).ThenBy(p => p.Id.Value, StringComparer.Ordinal)) Pattern(page, book, pattern);
    }

    private static void Pattern(StringBuilder page, Rulebook book, Pattern pattern)
    {
        page.Append(CultureInfo.InvariantCulture, $"\n### {pattern.Name}\n\n`{pattern.Id.Value}`, {pattern.Precedence}, {MeasurePages.Source(pattern.Source)}\n\n> {pattern.Because}\n\n");
        Line(page, "Clubs", pattern.Clubs.Select(c => Terms.Of(c)));
        Line(page, "When", pattern.When.Select(ConditionText.Of), code: true);
        Line(page, "In range", pattern.Needs.Select(m => m.Value), code: true);
        Line(page, "Unless", pattern.Unless.Select(ConditionText.Of), code: true);
        Line(page, "Root", pattern.Root.Select(f => f.ToString()), code: true);
        Line(page, "Explains", pattern.Explains.Select(f => f.ToString()), code: true);
        Line(page, "Explains if present", pattern.ExplainsIfPresent.Select(f => f.ToString()), code: true);
        Line(page, "Stands over", pattern.Over.Select(p => Link(book, p)));
        Line(page, "Worked on before", pattern.Before.Select(p => Link(book, p)));
        Line(page, "Leaves out work on", pattern.Forbids.Select(f => f.ToString()), code: true);
        Line(page, "Work", pattern.Root.Select(book.For).OfType<Progression>().Distinct().Select(p => DrillPages.Link(p.Name)));
        page.Append(CultureInfo.InvariantCulture, $"\n{pattern.Rationale}\n");
        if (pattern.Debatable is { } doubt) page.Append(CultureInfo.InvariantCulture, $"\nDebatable: {doubt}\n");
    }

    private static string Link(Rulebook book, PatternId id) => DrillPages.Link(book.Find(id)!.Name);

    private static void Line(StringBuilder page, string name, IEnumerable<string> values, bool code = false)
    {
        var all = values.Select(v => code ? $"`{v}`" : v).ToList();
        if (all.Count > 0) page.Append(CultureInfo.InvariantCulture, $"- {name}: {string.Join(", ", all)}\n");
    }
}
