using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>Finds out how a file is laid out, from its first rows.</summary>
internal static partial class LayoutReader
{
    private const int MostColumns = 200;

    private static readonly char[] Delimiters = [',', ';', '\t', '|'];

    /// <summary>The layout, or why the file cannot be one.</summary>
    public static Outcome<FileLayout> Of(string path, SheetKind kind)
    {
        using var first = FileText.Open(path);
        if (first is null) return new Refusal("file-no-text", "This is no text file. Save the sheet as CSV and bring that.", "file");
        var line = first.ReadLine();
        while (line is not null && line.Trim().Length == 0) line = first.ReadLine();
        if (line is null) return new Refusal("file-empty", "The file is empty.", "file");
        var delimiter = Delimiters.MaxBy(d => line.Count(c => c == d));
        return Of(path, delimiter, kind);
    }

    private static Outcome<FileLayout> Of(string path, char delimiter, SheetKind kind)
    {
        using var text = FileText.Open(path)!;
        using var cells = new CsvCells(text, delimiter, kind);
        cells.Next();
        if (cells.Count > MostColumns) return new Refusal("file-too-wide", $"The file has {cells.Count} columns; {MostColumns} are the most that are read.", "file");
        string[] names = [.. Enumerable.Range(0, cells.Count).Select(i => cells[i])];
        if (cells.IsBad || names.Length < 2)
            return new Refusal("file-no-columns", "The first row names no columns: nothing in it is set apart by commas, semicolons or tabs.", "file");
        if (names.Count(IsNumber) > names.Length / 2)
            return new Refusal("file-no-names", "The first row holds numbers. Bring the file with the row that names its columns on top.", "file");
        if (!cells.Next()) return OnlyNames(kind);
        string[] below = [.. Enumerable.Range(0, cells.Count).Select(i => cells[i])];
        var units = kind.HasUnits && AreUnits(below);
        if (units && !cells.Next()) return OnlyNames(kind);
        var columns = Columns(names, units ? below : [], kind);
        return new FileLayout(delimiter, units ? 2 : 1, columns, Hash(names, units ? below : []));
    }

    private static Refusal OnlyNames(SheetKind kind) => new("file-no-rows", $"The file names its columns and holds no {kind.Row} below them.", "file");

    private static List<FileColumn> Columns(string[] names, string[] units, SheetKind kind)
    {
        var split = names.Select((name, i) => name.Length > 0 ? name : $"column {i + 1}")
            .Select((name, i) => kind.HasUnits ? Split(name, i < units.Length ? units[i] : "") : (Name: name, Unit: null)).ToList();
        var again = split.GroupBy(s => s.Name, StringComparer.OrdinalIgnoreCase).ToDictionary(g => g.Key, g => g.Count(), StringComparer.OrdinalIgnoreCase);
        var seen = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        return [.. split.Select((s, i) =>
        {
            var number = seen[s.Name] = seen.GetValueOrDefault(s.Name) + 1;
            var isDouble = again[s.Name] > 1;
            return new FileColumn(i, isDouble ? $"{s.Name} (the {number}. of this name)" : s.Name, s.Unit) { Plain = Plain(s.Name), IsDouble = isDouble };
        })];
    }

    /// <summary>"Club speed [mph]" is a name with a unit; so is a name with the unit in the row below.</summary>
    private static (string Name, Unit? Unit) Split(string name, string below)
    {
        var match = Bracketed().Match(name);
        if (match.Success && UnitSpelling.Find(match.Groups["unit"].Value) is { } unit) return (match.Groups["name"].Value, unit);
        return (name, UnitSpelling.Find(below));
    }

    private static bool AreUnits(string[] row) => row.Any(c => UnitSpelling.Find(c) is not null) && !row.Any(IsNumber) && row.All(c => c.Length <= 12);

    private static bool IsNumber(string cell) => cell.Length > 0 && cell.Any(char.IsAsciiDigit) && cell.All(c => char.IsAsciiDigit(c) || c is '.' or ',' or '-' or '+' or '\u2212');

    private static string Plain(string name) => Gaps().Replace(name.Replace('_', ' ').Replace('-', ' ').Trim(), " ").ToLowerInvariant();

    private static string Hash(string[] names, string[] units)
    {
        var all = string.Join('\u001f', names.Concat(units).Select(Plain));
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(all)));
    }

    [GeneratedRegex(@"^(?<name>.*\S)\s*[\[(](?<unit>[^\])]+)[\])]$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Bracketed();

    [GeneratedRegex(@"\s+", RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Gaps();
}
