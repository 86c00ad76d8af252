using CoachOffice.Domain;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Lessons;

/// <summary>From what was typed into a field of the lesson sheet to readings in the measure's own unit.</summary>
public static class ReadingEntry
{
    /// <summary>So many swings a lesson holds of one measure: what one import may bring; nobody types as many.</summary>
    public const int MostSwings = 500;

    /// <summary>True where a protractor read from the ground on the target side makes sense: leans seen face-on.</summary>
    public static bool TakesAsRead(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return measure.Unit == Unit.Degree && measure.View == View.FaceOn && measure.Positive.StartsWith("away from", StringComparison.Ordinal);
    }

    /// <summary>The values in the measure's own unit, in the order typed; the first belongs to swing 1, and a dash stands for a swing that was not read.</summary>
    /// <param name="text">As typed; a unit may stand behind each number.</param>
    /// <param name="unit">Unit of numbers without one.</param>
    /// <param name="measure">What was measured.</param>
    /// <param name="asRead">Numbers are a line's angle from the ground on the target side.</param>
    public static Outcome<IReadOnlyList<SwingValue>> Parse(string? text, Unit unit, Measure measure, bool asRead)
    {
        ArgumentNullException.ThrowIfNull(measure);
        if (asRead && !TakesAsRead(measure)) return Refuse(measure, "as-read-not-here", $"{measure.Name} is not read from the ground; untick \"as read\".");
        var parsed = NumberEntry.Parse(text);
        if (!parsed.TryGet(out var numbers)) return Refuse(measure, parsed.Refusals[0].Code, $"{measure.Name}: {parsed.Refusals[0].Sentence}");
        if (numbers.Count > MostSwings) return Refuse(measure, "too-many-swings", $"{measure.Name}: give at most {MostSwings} values, one per swing.");
        var values = numbers.Index().Where(n => n.Item is not null).Select(n => (Swing: n.Index + 1, Read: Value(n.Item!, unit, measure, asRead))).ToList();
        var refused = values.SelectMany(v => v.Read.Refusals).ToList();
        return refused.Count > 0 ? Outcome<IReadOnlyList<SwingValue>>.Refused(refused) : Outcome<IReadOnlyList<SwingValue>>.Of([.. values.Select(v => new SwingValue(v.Swing, v.Read.Value))]);
    }

    /// <summary>The readings of one field; several values are several swings.</summary>
    public static Outcome<IReadOnlyList<TakenReading>> Take(MeasureEntry entry, Book book)
    {
        ArgumentNullException.ThrowIfNull(entry);
        ArgumentNullException.ThrowIfNull(book);
        if (string.IsNullOrWhiteSpace(entry.Text)) return Outcome<IReadOnlyList<TakenReading>>.Of([]);
        if (string.IsNullOrWhiteSpace(entry.Measure) || book.Find(MeasureId.From(entry.Measure)) is not { } measure)
            return new Refusal("measure-not-known", $"The rulebook has no measure '{entry.Measure}'.", FieldOf(entry.Measure));
        if (UnitOf(entry, measure) is not { } unit) return Refuse(measure, "unit-wrong", WrongUnit(entry.Unit, measure));
        if (Rate(entry, measure) is { } badRate) return badRate;
        var values = Parse(entry.Text, unit, measure, entry.AsRead);
        return values.Succeeded
            ? Outcome<IReadOnlyList<TakenReading>>.Of([.. values.Value.Select(value => Taken(entry, measure, value))])
            : Outcome<IReadOnlyList<TakenReading>>.Refused(values.Refusals);
    }

    /// <summary>Name of the form field of a measure, as refusals carry it.</summary>
    public static string FieldOf(string measure) => $"readings[{measure}]";

    private static TakenReading Taken(MeasureEntry entry, Measure measure, SwingValue read) => new()
    {
        Measure = measure.Id,
        Value = read.Value,
        Swing = read.Swing,
        View = measure.View,
        Instrument = entry.Instrument ?? UsualOf(measure),
        FrameRate = NumberEntry.One(entry.FrameRate).TryGet(out var rate) ? rate : null,
    };

    /// <summary>What a measure is usually taken with.</summary>
    public static Instrument UsualOf(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return measure.Instruments is [var usual, ..] ? usual : Instrument.Video;
    }

    private static Refusal? Rate(MeasureEntry entry, Measure measure) =>
        string.IsNullOrWhiteSpace(entry.FrameRate) || NumberEntry.One(entry.FrameRate).TryGet(out var rate) && rate is >= 10 and <= 10_000
            ? null
            : Refuse(measure, "frame-rate", $"{measure.Name}: frames a second lie between 10 and 10000, such as 240.");

    private static Unit? UnitOf(MeasureEntry entry, Measure measure) =>
        string.IsNullOrWhiteSpace(entry.Unit) ? measure.Unit : Unit.Find(entry.Unit) is { } unit && unit.Dimension == measure.Unit.Dimension ? unit : null;

    private static Outcome<Quantity> Value(EnteredNumber number, Unit unit, Measure measure, bool asRead)
    {
        var named = number.Unit is null ? unit : Unit.Find(number.Unit);
        if (named is null || named.Dimension != measure.Unit.Dimension) return Refuse(measure, "unit-wrong", WrongUnit(number.Unit, measure));
        var typed = new Quantity(number.Value, named);
        var value = asRead ? AsRead.TiltFromTargetSide(typed) : typed.In(measure.Unit);
        return measure.Plausible.Contains(value.Value) ? value : Refuse(measure, "outside-limits", Outside(number, named, measure, asRead));
    }

    private static string Outside(EnteredNumber number, Unit unit, Measure measure, bool asRead)
    {
        var fromGround = !asRead && TakesAsRead(measure) && measure.Plausible.Contains(AsRead.TiltFromTargetSide(new Quantity(number.Value, unit)).Value);
        var hint = fromGround ? " Did you read it from the ground? Then tick \"as read\"." : "";
        var typed = new Quantity(number.Value, unit);
        var said = asRead ? $"{typed} as read from the ground means {AsRead.TiltFromTargetSide(typed)}, which" : typed.ToString();
        return $"{measure.Name}: {said} is outside what can be, {Band(measure)}.{hint}{(asRead ? " Untick \"as read\" if it was read from the plumb line." : "")}";
    }

    private static string Band(Measure measure) => (measure.Plausible.Low, measure.Plausible.High) switch
    {
        ({ } low, { } high) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{low} to {high} {measure.Unit}"),
        ({ } low, null) => $"at least {new Quantity(low, measure.Unit)}",
        (null, { } high) => $"at most {new Quantity(high, measure.Unit)}",
        _ => "a number",
    };

    private static string WrongUnit(string? unit, Measure measure)
    {
        var right = string.Join(", ", Unit.All.Where(u => u.Dimension == measure.Unit.Dimension).Select(u => u.Symbol));
        return $"{measure.Name}: '{unit}' is no unit for it; write {right}.";
    }

    private static Refusal Refuse(Measure measure, string code, string sentence) => new(code, sentence, FieldOf(measure.Id.Value));
}
