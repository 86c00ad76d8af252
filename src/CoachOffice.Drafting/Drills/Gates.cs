using System.Globalization;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting.Ordering;
using CoachOffice.Drafting.Words;

namespace CoachOffice.Drafting.Drills;

/// <summary>What opens the next stage: counts on two days, then the measure itself, then results, then the coach.</summary>
internal sealed class Gates(LessonAtHand at)
{
    private const int FewestFullSwings = 5;
    private const int MostFullSwings = 12;

    public DraftGate After(Candidate candidate, LadderRung rung) => rung.Stage switch
    {
        Stage.Rehearse or Stage.Half => Counted(rung, GateKind.Count, "on each of two separate days"),
        Stage.Full => Measured(candidate.Finding),
        Stage.Mix => Counted(rung, GateKind.Outcome, "with club and target changing every ball"),
        _ => new DraftGate { Kind = GateKind.Coach, Readings = 0, Text = $"{Sentences.NameOf(candidate.Finding)} is read again and the coach decides." },
    };

    private static DraftGate Counted(LadderRung rung, GateKind kind, string where)
    {
        var done = rung.First.DoneWhen;
        return new DraftGate
        {
            Kind = kind,
            AtLeast = done.Hits,
            Readings = done.Of,
            Text = string.Create(CultureInfo.InvariantCulture, $"{done.Hits} of {done.Of} {done.What}, {where}"),
        };
    }

    /// <summary>A mild fault is asked to reach the edge; a larger one half the way there, and more than the smallest real change.</summary>
    private DraftGate Measured(Finding finding)
    {
        var swings = Swings(finding);
        var way = finding.Weight <= 1 ? finding.OutsideBy : Math.Min(finding.OutsideBy, Math.Max(finding.OutsideBy / 2, RealChange(finding, swings)));
        var low = finding.Side == Side.Low;
        var target = low ? Rounded(finding, finding.Value.Value + way, up: true) : Rounded(finding, finding.Value.Value - way, up: false);
        var bound = Signs.Bound(finding.Measure, target, isFloor: low);
        return new DraftGate
        {
            Kind = GateKind.Measure,
            Measure = finding.Measure.Id.Value,
            AtLeast = low ? target : null,
            AtMost = low ? null : target,
            Readings = swings,
            Text = string.Create(CultureInfo.InvariantCulture, $"{Sentences.NameOf(finding)} {bound}, as the mean of {swings} full swings or more"),
        };
    }

    /// <summary>Five swings, or as many more as it takes for the way to the edge to be more than reading error.</summary>
    private int Swings(Finding finding)
    {
        for (var n = FewestFullSwings; n <= MostFullSwings; n++)
        {
            if (RealChange(finding, n) <= finding.OutsideBy) return n;
        }

        return FewestFullSwings;
    }

    private double RealChange(Finding finding, int swings)
    {
        var taken = at.Facts.Readings.FirstOrDefault(r => r.Measure == finding.Measure.Id)
            ?? new MeasuredValue { Measure = finding.Measure.Id, Value = finding.Value, Readings = finding.Readings };
        return Verdicts.SmallestRealChange(taken, taken with { Readings = swings }, finding.Measure).Value;
    }

    /// <summary>To a number a person can read off, never beyond the edge.</summary>
    private static double Rounded(Finding finding, double target, bool up)
    {
        var scale = finding.Step >= 1 ? 10.0 : 100.0;
        var rounded = up ? Math.Ceiling(Math.Round(target * scale, 6)) / scale : Math.Floor(Math.Round(target * scale, 6)) / scale;
        return up ? Math.Min(rounded, finding.Range!.Low!.Value) : Math.Max(rounded, finding.Range!.High!.Value);
    }
}
