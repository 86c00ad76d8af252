using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Plans.Story;

/// <summary>What opens the next stage, with the deciding number apart so that it can stand large.</summary>
/// <param name="Number">The number that decides, or empty.</param>
/// <param name="Text">The whole sentence.</param>
/// <param name="By">By what it is decided.</param>
internal sealed record GateText(string Number, string Text, string By)
{
    public static GateText Of(PlanGate gate, Domain.Plans.Rulebook book, UnitText units)
    {
        var measure = gate.Measure is null ? null : book.Find(MeasureId.From(gate.Measure));
        var number = gate.Kind switch
        {
            GateKind.Measure when measure is not null => units.Band(gate.AtLeast, gate.AtMost, measure.Unit),
            GateKind.Count or GateKind.Outcome => Leading(gate.Text),
            _ => "",
        };
        var text = number.Length > 0 && gate.Text.StartsWith(number, StringComparison.Ordinal) ? gate.Text[number.Length..].TrimStart(' ', ',') : gate.Text;
        return new(number, text, PlanWords.Of(gate.Kind));
    }

    /// <summary>"8 of 10" out of "8 of 10 with the stick untouched, on two days".</summary>
    private static string Leading(string text)
    {
        var words = text.Split(' ', 4);
        return words.Length >= 3 && int.TryParse(words[0], out _) && words[1] == "of" && int.TryParse(words[2].TrimEnd(',', '.'), out _) ? $"{words[0]} of {words[2].TrimEnd(',', '.')}" : "";
    }
}
