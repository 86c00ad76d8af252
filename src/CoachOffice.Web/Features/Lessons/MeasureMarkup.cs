using System.Runtime.CompilerServices;
using System.Text.Encodings.Web;
using CoachOffice.Domain.Measuring;

namespace CoachOffice.Web.Features.Lessons;

/// <summary>What a sheet says of a measure whoever was measured, as markup; kept as long as its rulebook is.</summary>
internal sealed class MeasureMarkup
{
    private static readonly ConditionalWeakTable<Measure, MeasureMarkup> Written = [];

    private MeasureMarkup(Measure measure)
    {
        var sign = $"Positive is {measure.Positive}{(measure.Negative is { } negative ? $", negative {negative}" : "")}.";
        Name = HtmlEncoder.Default.Encode(measure.Name);
        How = $"<details class=\"measure-how\"><summary>How it is taken</summary><p class=\"small\">{HtmlEncoder.Default.Encode(measure.HowTo)}</p><p class=\"small quiet\">{HtmlEncoder.Default.Encode(sign)}</p><div class=\"taken\">";
    }

    public string Name { get; }

    /// <summary>Begins the part that unfolds; the fields follow.</summary>
    public string How { get; }

    public static MeasureMarkup Of(Measure measure) => Written.GetValue(measure, static m => new MeasureMarkup(m));
}
