using System.Globalization;
using CoachOffice.Domain.Measuring;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>What the numbers of one swing must agree on among themselves.</summary>
internal sealed class SwingCheck
{
    /// <summary>So many standard errors of the three devices' settings beyond the range is far (own judgement: one in a few hundred by chance).</summary>
    private const double Far = 3;

    private readonly List<(Measure Measure, int[] Parts)> _derived;
    private readonly (int Path, int Turn, int Start, double Allowance)? _start;

    public SwingCheck(IReadOnlyList<RowMeasure> columns, Book book)
    {
        _derived = [.. from measure in book.Measures
                       where measure.Derived is not null
                       let parts = measure.Derived!.Parts.Select(p => At(columns, p)).ToArray()
                       where parts.All(p => p >= 0)
                       select (measure, parts)];
        var (path, turn, start) = (At(columns, NamedMeasures.ClubPath), At(columns, NamedMeasures.FaceToPath), At(columns, NamedMeasures.StartDirection));
        if (path >= 0 && turn >= 0 && start >= 0)
            _start = (path, turn, start, Far * Math.Sqrt(new[] { path, turn, start }.Sum(i => Math.Pow(columns[i].Measure.SetupError, 2))));
    }

    /// <summary>What cannot be, or null.</summary>
    public string? Refuses(double?[] values)
    {
        foreach (var (measure, parts) in _derived)
        {
            if (Derive(measure, parts, values) is { } value && !measure.Plausible.Contains(value))
                return string.Create(CultureInfo.InvariantCulture, $"{measure.Name} would be {value:0.00}, outside what can be, {Band(measure.Plausible)}.");
        }

        return null;
    }

    /// <summary>What is odd, or null.</summary>
    public (string Code, string Sentence)? Doubts(double?[] values)
    {
        foreach (var (measure, parts) in _derived)
        {
            if (Derive(measure, parts, values) is { } value && measure.Doubtful is { } band && !band.Contains(value))
                return ("device-error", string.Create(CultureInfo.InvariantCulture, $"{measure.Name} is {value:0.00}, device error likely: it is hardly ever {Beyond(band, value)}."));
        }

        return Start(values) is { } sentence ? ("start-direction", sentence) : null;
    }

    private string? Start(double?[] values)
    {
        if (_start is not { } s || values[s.Path] is not { } path || values[s.Turn] is not { } turn || values[s.Start] is not { } start) return null;
        var range = StartDirectionRange.Of(new Quantity(path, Unit.Degree), new Quantity(turn, Unit.Degree));
        if (start >= range.Low - s.Allowance && start <= range.High + s.Allowance) return null;
        return string.Create(CultureInfo.InvariantCulture, $"Start direction {start:0.0}° lies far from where path {path:0.0}° and a face {Math.Abs(turn):0.0}° {(turn < 0 ? "closed" : "open")} to it send a ball, {range.Low:0.0} to {range.High:0.0}°: check signs and strike.");
    }

    private static double? Derive(Measure measure, int[] parts, double?[] values)
    {
        if (!parts.All(p => values[p] is not null)) return null;
        if (measure.Derived!.Kind == DerivationKind.Sum) return parts.Sum(p => values[p]!.Value);
        return values[parts[1]] == 0 ? null : Math.Round(values[parts[0]]!.Value / values[parts[1]]!.Value, 9);
    }

    private static int At(IReadOnlyList<RowMeasure> columns, MeasureId measure) => columns.Index().FirstOrDefault(c => c.Item.Measure.Id == measure, (-1, null!)).Item1;

    private static string Band(Limits band) => string.Create(CultureInfo.InvariantCulture, $"{band.Low} to {band.High}");

    private static string Beyond(Limits band, double value) => string.Create(CultureInfo.InvariantCulture, $"{(value > band.High ? $"above {band.High}" : $"below {band.Low}")}");
}
