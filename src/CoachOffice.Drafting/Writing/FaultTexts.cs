using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Writing;

/// <summary>Faults as the files write them; low followed by high of one measure is <c>.out</c>.</summary>
internal static class FaultTexts
{
    public static IReadOnlyList<string> Of(IReadOnlyList<FaultId> faults)
    {
        var texts = new List<string>();
        for (var i = 0; i < faults.Count; i++)
        {
            var both = faults[i].Side == Side.Low && i + 1 < faults.Count && faults[i + 1] == new FaultId(faults[i].Measure, Side.High);
            texts.Add(both ? $"{faults[i].Measure.Value}.out" : faults[i].ToString());
            if (both) i++;
        }

        return texts;
    }
}
