using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading.Entries;

/// <summary>Reads <c>dosage</c>: how drills are fitted into a week. A rulebook has it once.</summary>
internal sealed class DosageEntry(Shelf shelf)
{
    private const int WeekMinutes = 7 * 24 * 60;

    /// <summary>The dosage; null with a fault when it is missing or wrong.</summary>
    public Dosage? Read()
    {
        if (shelf.Files.TheOnly("dosage") is not { } node || Entry.Of(node, shelf.Faults) is not { } entry) return null;
        var dosage = new Dosage
        {
            MostDrills = entry.Whole("most-drills", 1, 20),
            OneDrillBelowMinutes = entry.Whole("one-drill-below-minutes", 0, WeekMinutes),
            TwoDrillsBelowMinutes = entry.Whole("two-drills-below-minutes", 0, WeekMinutes),
            FewestReps = entry.Whole("fewest-reps", 1, 1000),
            ShortestSessionMinutes = entry.Whole("shortest-session-minutes", 1, 240),
            SessionsAWeek = entry.Whole("sessions-a-week", 1, 21),
            MostFullSpeedBalls = entry.Whole("most-full-speed-balls", 1, 1000),
            LookAgainAfterDays = entry.Whole("look-again-after-days", 1, 366),
            Stages = Stages(entry),
        };
        entry.Close();
        if (dosage.TwoDrillsBelowMinutes < dosage.OneDrillBelowMinutes)
            shelf.Faults.Add(entry.Find("two-drills-below-minutes") ?? node, "this is below one-drill-below-minutes; two drills take more time than one");
        return dosage;
    }

    private List<StageDosage> Stages(Entry entry)
    {
        var found = new List<StageDosage>();
        foreach (var item in entry.Items("stages"))
        {
            if (Entry.Of(item, shelf.Faults) is not { } stage) continue;
            var dosage = One(stage);
            stage.Close();
            if (!stage.Sound) continue;
            if (found.Exists(s => s.Stage == dosage.Stage)) shelf.Faults.Add(item, $"the stage {Terms.Of(dosage.Stage)} stands here already; keep one");
            found.Add(dosage);
        }

        var missing = Enum.GetValues<Stage>().Except(found.Select(s => s.Stage)).Select(s => Terms.Of(s)).ToList();
        if (entry.Sound && missing.Count > 0) shelf.Faults.Add(entry.Find("stages")!, $"every stage needs a dosage; missing: {string.Join(", ", missing)}");
        return [.. found.OrderBy(s => s.Stage)];
    }

    private StageDosage One(Entry entry)
    {
        var (rate, days) = (entry.Number("reps-per-minute"), entry.Items("days"));
        if (entry.Sound && rate is <= 0 or > 60) shelf.Faults.Add(entry.Find("reps-per-minute")!, $"{Single.Show(rate)} a minute is not possible; write a number above 0, at most 60");
        var ends = days.Select(day => Single.Whole(day, 1, 366, shelf.Faults)).ToList();
        if (entry.Find("days") is ListNode list && (ends.Count != 2 || ends[0] > ends[1])) shelf.Faults.Add(list, "write [shortest, longest] in days");
        return new StageDosage(entry.Word<Stage>("stage"), rate, entry.Whole("most-reps", 1, 1000), ends.FirstOrDefault(), ends.LastOrDefault());
    }
}
