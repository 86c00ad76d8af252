using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Lessons;
using CoachOffice.Web.Shell.Wording;
using NodaTime;

namespace CoachOffice.Web.Features.Lessons;

/// <summary>One field of the sheet as shown: as typed after a refused save, else as kept.</summary>
internal sealed record SheetRow
{
    public required SheetField Field { get; init; }

    public required string Text { get; init; }

    public required string Instrument { get; init; }

    public required string FrameRate { get; init; }

    public required bool AsRead { get; init; }

    public Measure Measure => Field.Measure;

    public string Key => Field.Measure.Id.Value;

    /// <summary>The same name a refusal of this field carries.</summary>
    public string Name => ReadingEntry.FieldOf(Key);

    /// <summary>The usual way first; the eye is always possible.</summary>
    public IEnumerable<Instrument> Instruments => Field.Measure.Instruments.Append(Domain.Measuring.Instrument.Eye).Append(Field.Instrument).Distinct();

    public string Wanted(UnitText units) => Field.Range is { } range ? $"wanted {units.Band(range.Low, range.High, Measure.Unit)}" : "no range for this club";

    public string? Ghost(UnitText units) => Field is { LastTime: { } value, LastOn: { } day }
        ? $"last time {units.Amount(new Quantity(value, Field.Unit).In(Measure.Unit).Value, Measure.Unit)} on {Short(day)}"
        : null;

    /// <summary>Last time's value as it would be typed, the field's ghost.</summary>
    public string? LastTime => Field.LastTime is { } value ? ShownUnits.Number(value) : null;

    public static SheetRow Kept(SheetField field) => new()
    {
        Field = field,
        Text = field.Text,
        Instrument = Terms.Of(field.Instrument),
        FrameRate = field.FrameRate is { } rate ? rate.ToString(System.Globalization.CultureInfo.InvariantCulture) : "",
        AsRead = false,
    };

    public static SheetRow Typed(SheetField field, SheetInput sheet)
    {
        var key = field.Measure.Id.Value;
        return new()
        {
            Field = field,
            Text = sheet.Readings.GetValueOrDefault(key) ?? "",
            Instrument = sheet.Instruments.GetValueOrDefault(key) ?? Terms.Of(field.Instrument),
            FrameRate = sheet.FrameRates.GetValueOrDefault(key) ?? "",
            AsRead = sheet.AsRead.ContainsKey(key),
        };
    }

    private static string Short(LocalDate day) => day.ToString("d MMM", System.Globalization.CultureInfo.InvariantCulture);
}
