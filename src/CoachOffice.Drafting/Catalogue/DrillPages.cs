using System.Globalization;
using System.Text;
using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Words;

namespace CoachOffice.Drafting.Catalogue;

/// <summary>Ladders, their drills, and the cautions.</summary>
internal static class DrillPages
{
    public static void Write(StringBuilder page, Rulebook book)
    {
        page.Append("\n## Ladders\n\nDrills stand best first; a plan takes those that fit the student's body, room, kit and week.\n");
        foreach (var ladder in book.Progressions) Ladder(page, book, ladder);
        page.Append("\n## Drills\n");
        foreach (var drill in book.Drills) Drill(page, book, drill);
        page.Append("\n## Cautions\n\n");
        foreach (var caution in book.Cautions) page.Append(CultureInfo.InvariantCulture, $"- `{caution.Id.Value}` ({Terms.Of(caution.Occasion).Replace('-', ' ')}): {caution.Text}\n");
    }

    /// <summary>A link to the heading of this name on the page.</summary>
    public static string Link(string name) =>
        $"[{name}](#{string.Concat(name.ToLowerInvariant().Where(c => char.IsLetterOrDigit(c) || c is ' ' or '-')).Replace(' ', '-')})";

    private static void Ladder(StringBuilder page, Rulebook book, Progression ladder)
    {
        page.Append(CultureInfo.InvariantCulture, $"\n### {ladder.Name}\n\nFor {string.Join(", ", ladder.Faults.Select(f => $"`{f}`"))}.\n\n");
        foreach (var rung in ladder.Rungs)
            page.Append(CultureInfo.InvariantCulture, $"- {Sentences.UpperFirst(Terms.Of(rung.Stage))}: {string.Join(", ", rung.Drills.Select(d => Link(book.Find(d)!.Name)))}\n");
        var roots = book.Patterns.Where(p => p.Root.Any(ladder.Faults.Contains)).OrderBy(p => p.Precedence).ThenBy(p => p.Id.Value, StringComparer.Ordinal).ToList();
        if (roots.Count > 0) page.Append(CultureInfo.InvariantCulture, $"- Called for by: {string.Join(", ", roots.Select(p => Link(p.Name)))}\n");
    }

    private static void Drill(StringBuilder page, Rulebook book, Drill drill)
    {
        page.Append(CultureInfo.InvariantCulture, $"\n### {drill.Name}\n\n`{drill.Id.Value}`, {string.Join(" and ", drill.Stages.Select(s => Terms.Of(s)))}, {Club(drill.Club)}\n\n> {drill.Cue}\n\n");
        for (var i = 0; i < drill.Steps.Count; i++) page.Append(CultureInfo.InvariantCulture, $"{i + 1}. {drill.Steps[i]}\n");
        page.Append(CultureInfo.InvariantCulture, $"\nDone when: {drill.DoneWhen.Hits} of {drill.DoneWhen.Of} {drill.DoneWhen.What}.\n\n");
        List<(string Name, string Value)> lines =
        [
            ("Trains", string.Join(", ", drill.Trains.Select(f => $"`{f}`"))),
            ("Pushes", string.Join(", ", drill.Opposites.Select(f => $"`{f}`"))),
            ("Where", string.Join(", ", drill.Rooms.Select(r => Terms.Of(r)))),
            ("Kit", string.Join(", ", drill.Kit.Select(k => Terms.Of(k)))),
            ("Loads", string.Join(", ", drill.Loads.Select(l => $"{Terms.Of(l.Region)}{(l.MoreThanSwing ? " (more than a swing)" : "")}"))),
            ("Levels", string.Join(", ", drill.Levels.Select(l => Terms.Of(l)))),
            ("Youngest age", drill.FromAge?.ToString(CultureInfo.InvariantCulture) ?? ""),
            ("At most", drill.MostReps is { } most ? string.Create(CultureInfo.InvariantCulture, $"{most} a session") : ""),
            ("Cautions", string.Join(", ", drill.Cautions.Select(c => $"`{c.Value}`"))),
            ("Stands in", Ladders(book, drill)),
        ];
        foreach (var (name, value) in lines.Where(l => l.Value.Length > 0)) page.Append(CultureInfo.InvariantCulture, $"- {name}: {value}\n");
    }

    /// <summary>A transfer drill stands in all of them, which needs no list.</summary>
    private static string Ladders(Rulebook book, Drill drill) =>
        drill.Trains.Count == 0 ? "every ladder" : string.Join(", ", book.Progressions.Where(p => p.Rungs.Any(r => r.Drills.Contains(drill.Id))).Select(p => Link(p.Name)));

    private static string Club(DrillClub club) => club switch
    {
        DrillClub.None => "without a club",
        DrillClub.Short => "with a short club or a short swing",
        _ => "with a club",
    };
}
