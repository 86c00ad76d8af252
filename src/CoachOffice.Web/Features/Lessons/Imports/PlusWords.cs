using CoachOffice.Domain;
using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Lessons.Imports;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Lessons.Imports;

/// <summary>What a positive number of a column can mean, said to a person.</summary>
internal static class PlusWords
{
    /// <summary>The choices; in the measure's own words where it is known which it is.</summary>
    public static IEnumerable<(string Word, string Text)> Choices(Measure? measure)
    {
        if (measure is { Negative: null })
        {
            yield return (Terms.Of(PlusMeans.Ours), MeasureWords.Capital(measure.Positive));
            yield break;
        }

        yield return (Terms.Of(PlusMeans.Ours), measure is { Negative: not null } ? MeasureWords.Capital(measure.Positive) : "The same as here");
        yield return (Terms.Of(PlusMeans.Opposite), measure?.Negative is { } negative ? MeasureWords.Capital(negative) : "The other side");
        if (measure is not null && !DeviceMeasures.IsSideways(measure)) yield break;
        yield return (Terms.Of(PlusMeans.Right), "Right of the target");
        yield return (Terms.Of(PlusMeans.Left), "Left of the target");
    }
}
