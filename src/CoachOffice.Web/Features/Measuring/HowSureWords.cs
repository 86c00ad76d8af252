using System.Globalization;
using CoachOffice.Domain.Measuring;

namespace CoachOffice.Web.Features.Measuring;

/// <summary>An intraclass correlation in words.</summary>
internal static class HowSureWords
{
    public static string Of(Icc icc) =>
        string.Create(CultureInfo.InvariantCulture, $"{Name(icc.Form)} {icc.Value:0.00} ({icc.Interval.Low:0.00} to {icc.Interval.High:0.00})");

    private static string Name(IccForm form) => form == IccForm.AgreementSingle ? "ICC(2,1)" : "ICC(1,1)";
}
