using CoachOffice.Domain.Plans;
using CsCheck;

namespace CoachOffice.Drafting.Tests.Properties;

/// <summary>The random lessons reach every corner of the drafter; otherwise the properties would prove little.</summary>
public sealed class SampleTests
{
    [Fact]
    public void The_sample_sees_every_kind_of_draft()
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        RandomLessons.One.Sample(
            facts =>
            {
                var draft = Drafter.Draft(HouseBook.Compiled, facts);
                seen.Add($"{draft.Focus.Count} focuses");
                seen.UnionWith(draft.Trace.Select(t => t.Rule.Split(':')[0] is "pattern" or "near-miss" ? t.Rule.Split(':')[0] : t.Rule));
                seen.UnionWith(draft.Parked.Select(p => $"parked {p.Reason}"));
                seen.UnionWith(draft.Withheld.Select(w => $"withheld {w.Reason}"));
                seen.UnionWith(draft.Stages.Select(s => $"stage {s.Stage}"));
            },
            iter: 3000,
            threads: 1);

        string[] wanted =
        [
            "0 focuses", "1 focuses", "2 focuses", "pattern", "near-miss", "order:key", "order:leave-it", "pick:focus-1", "pick:focus-2", "pick:one-focus", "pick:skip", "park",
            .. Enum.GetValues<ParkedReason>().Select(r => $"parked {r}"),
            .. Enum.GetValues<WithheldReason>().Select(r => $"withheld {r}"),
            .. Enum.GetValues<Stage>().Select(s => $"stage {s}"),
        ];
        Assert.Empty(wanted.Except(seen));
    }
}
