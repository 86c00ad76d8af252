using System.CommandLine;
using CoachOffice.Data;
using CoachOffice.Data.Moving;
using CoachOffice.Domain;

namespace CoachOffice.Cli;

/// <summary><c>move --from sqlite:FILE --to postgresql:CONNECTION</c>, and the other way round.</summary>
internal static class MovePractice
{
    public static Command Command(Report report)
    {
        var (from, to) = (End("--from", "Where the practice is now"), End("--to", "The empty database it goes to"));
        var command = new Command("move", "Moves a practice from SQLite to PostgreSQL or back: every table, read again and compared before it counts. Stop the office first.") { from, to };
        command.SetAction(async (parsed, stop) =>
        {
            var (source, target) = (Read(parsed.GetValue(from)!), Read(parsed.GetValue(to)!));
            if (source.Refusals.Concat(target.Refusals).ToList() is { Count: > 0 } refusals) return report.Refuse(refusals);
            report.Write($"{"table",-26} {"rows there",10} {"rows here",10}  sum there         sum here\n");
            var moved = await new MoveOffice(source.Value, target.Value).Now(new Lines(report), stop);
            if (!moved.TryGet(out var prints)) return report.Refuse(moved.Refusals);
            report.Write($"{prints.Count} tables, {prints.Sum(p => p.To.Rows)} rows: every table holds the same in both.\n");
            report.Error("The database it came from is as it was. Do not start the office on it again: both would send what is due.");
            report.Error("Set Office:Database for the new one; stills and clips stay in the data folder.");
            return ExitCode.Done;
        });
        return command;
    }

    private static Option<string> End(string name, string what) => new(name)
    {
        Description = $"{what}: sqlite:FILE or postgresql:CONNECTION STRING. A password is better given by PGPASSWORD.",
        HelpName = "KIND:PLACE",
        Required = true,
    };

    private static Outcome<OfficeDatabase> Read(string end)
    {
        var (kind, place) = end.IndexOf(':') is > 0 and var at ? (end[..at], end[(at + 1)..]) : ("", "");
        return kind.ToLowerInvariant() switch
        {
            "sqlite" when place.Length > 0 => OfficeDatabase.InFile(Path.GetFullPath(place)),
            "postgresql" when place.Length > 0 => new OfficeDatabase(DatabaseProvider.PostgreSql, place),
            _ => new Refusal("move-unknown-end", $"'{kind}' is no place a practice can be. Write sqlite:data/office.db or postgresql:Host=localhost;Database=office;Username=office."),
        };
    }

    private sealed class Lines(Report report) : IProgress<MovedPrint>
    {
        public void Report(MovedPrint value) =>
            report.Write($"{value.To.Table,-26} {value.From.Rows,10} {value.To.Rows,10}  {value.From.Sum[..16]}  {value.To.Sum[..16]}{(value.Same ? "" : "  DIFFERS")}\n");
    }
}
