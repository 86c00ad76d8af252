using System.Globalization;
using System.Text;
using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;

namespace CoachOffice.Drafting.Coverage;

/// <summary>The coverage of a rulebook as a table for a person: one line for each answer that students of a kind get, and every hole by itself.</summary>
public static class CoverageText
{
    private const int MostHolesShown = 50;

    /// <summary>The table, lines ended by LF.</summary>
    public static string Write(IReadOnlyList<CoveredWork> all)
    {
        ArgumentNullException.ThrowIfNull(all);
        var text = new StringBuilder();
        var faults = all.Select(w => w.Fault).Distinct().Count();
        text.Append(CultureInfo.InvariantCulture, $"{all.Count} combinations: {faults} faults for {CoveredStudent.All.Count} kinds of student\n\n");
        foreach (var line in all.GroupBy(Line).OrderBy(g => g.Key, StringComparer.Ordinal))
            text.Append(CultureInfo.InvariantCulture, $"{line.Count(),7}  {line.Key}\n");
        Holes(text, [.. all.Where(w => w.IsHole)]);
        return text.ToString();
    }

    private static void Holes(StringBuilder text, List<CoveredWork> holes)
    {
        if (holes.Count == 0)
        {
            text.Append("\nno hole without a reason and something to do instead\n");
            return;
        }

        text.Append(CultureInfo.InvariantCulture, $"\n{holes.Count} holes without a reason or something to do instead:\n");
        foreach (var hole in holes.Take(MostHolesShown)) text.Append(CultureInfo.InvariantCulture, $"  {hole.Fault}: {hole.Student}: {Missing(hole)}\n");
        if (holes.Count > MostHolesShown) text.Append(CultureInfo.InvariantCulture, $"  and {holes.Count - MostHolesShown} more\n");
    }

    private static string Line(CoveredWork work)
    {
        var limit = work.Student.Limit is { } l ? $"{Terms.Of(l.Status)} limit" : "no limit";
        var where = $"{Terms.Of(work.Student.Room)}, {(work.Student.HasKit ? "usual kit" : "no kit")}, {limit}";
        return $"{where,-32} {Stages(work.Offered),-30} {Missing(work)}".TrimEnd();
    }

    private static string Stages(IReadOnlyList<Stage> stages) => stages.Count == 0 ? "nothing" : string.Join(' ', stages.Select(s => Terms.Of(s)));

    private static string Missing(CoveredWork work)
    {
        if (work.Missing.Count == 0) return "";
        var why = work.Missing.GroupBy(m => m.Value).Select(g => $"no {string.Join(' ', g.Select(m => Terms.Of(m.Key)))} ({(g.Key is { } reason ? Terms.Of(reason) : "no reason")})");
        return $"{string.Join(", ", why)} -> {(work.Instead.Count == 0 ? "nothing said" : string.Join(", ", work.Instead))}";
    }
}
