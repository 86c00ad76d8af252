using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>A column as it is read: from the device's unit and sign to ours.</summary>
internal sealed record RowMeasure(int Column, Measure Measure, Unit Unit, bool Flips)
{
    /// <param name="said">The mapping's column.</param>
    /// <param name="measure">Its measure.</param>
    /// <param name="hand">Whose swings they are: right of the target is in-to-out for a right-handed student only.</param>
    public static RowMeasure Of(MappedColumn said, Measure measure, Hand hand) => new(said.Column, measure, Unit.Find(said.Unit) ?? measure.Unit, said.Plus switch
    {
        PlusMeans.Opposite => true,
        PlusMeans.Right => hand == Hand.Left,
        PlusMeans.Left => hand == Hand.Right,
        _ => false,
    });

    /// <summary>The number in the measure's own unit and sign.</summary>
    public double Ours(double number)
    {
        var value = new Quantity(number, Unit).In(Measure.Unit).Value;
        return Flips && value != 0 ? -value : value;
    }
}
