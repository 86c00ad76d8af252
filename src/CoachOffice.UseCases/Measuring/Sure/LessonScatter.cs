using CoachOffice.Domain.Measuring;

namespace CoachOffice.UseCases.Measuring.Sure;

/// <summary>The swings of one lesson and measure, summed up by the database.</summary>
/// <param name="Measure">What was read.</param>
/// <param name="Instrument">With what.</param>
/// <param name="Swings">How many.</param>
/// <param name="Sum">Of the values.</param>
/// <param name="Squares">Sum of the values' squares.</param>
internal sealed record LessonScatter(MeasureId Measure, Instrument Instrument, int Swings, double Sum, double Squares)
{
    /// <summary>Sum of squared distances from the lesson's mean; rounding may leave a hair below none.</summary>
    public double Within => Math.Max(0, Squares - (Sum * Sum / Swings));
}
