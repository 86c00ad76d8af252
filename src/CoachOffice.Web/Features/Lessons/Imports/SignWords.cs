using CoachOffice.Domain.Measuring;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Lessons.Imports;

/// <summary>A number with the word for its side instead of a bare sign, where the measure has one: "1.2° open".</summary>
internal static class SignWords
{
    public static string Of(Finding finding, UnitText units) => Of(finding.Measure, finding.Value.Value, units);

    public static string Of(Measure measure, double value, UnitText units)
    {
        if (measure.Negative is not { } negative || value == 0) return units.Amount(value, measure.Unit);
        return $"{units.Amount(Math.Abs(value), measure.Unit)} {(value > 0 ? measure.Positive : negative)}";
    }
}
