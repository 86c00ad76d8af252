using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Drills;
using CoachOffice.Drafting.Ordering;

namespace CoachOffice.Drafting.Words;

/// <summary>The sentences of safety and doubt that go out with a plan.</summary>
internal sealed class PlanCautions(LessonAtHand at, Picked picked)
{
    private readonly GradingContext _context = new(at.Book, at.Facts);
    private readonly WhatInstead _instead = new(at, picked);
    private readonly List<LadderRung> _rungs = [.. picked.Focuses.SelectMany(f => f.Ladder.Rungs)];
    private readonly List<Drill> _drills = [.. picked.Focuses.SelectMany(f => f.Ladder.Rungs).SelectMany(r => r.Drills).Select(d => DrillId.From(d.Drill)).Distinct().Select(id => at.Book.Find(id)!)];

    private StudentFacts Student => at.Facts.Student;

    /// <summary>By occasion, then id; those of the drills last.</summary>
    public IReadOnlyList<DraftCaution> All() =>
    [
        .. from caution in at.Book.Cautions
           where caution.Occasion != CautionOccasion.Drill
           let concerned = Concerned(caution.Occasion)
           where concerned is not null
           orderby caution.Occasion, caution.Id.Value
           select Filled(caution, concerned),
        .. from caution in at.Book.Cautions
           where caution.Occasion == CautionOccasion.Drill && IsNamed(caution.Id)
           orderby caution.Id.Value
           select Filled(caution, [.. _drills.Where(d => d.Cautions.Contains(caution.Id)).Select(d => d.Name)]),
    ];

    private bool IsNamed(CautionId caution)
    {
        foreach (var drill in _drills) if (drill.Cautions.Contains(caution)) return true;
        return false;
    }

    private static DraftCaution Filled(Caution caution, IReadOnlyList<string> concerned) =>
        new(caution.Id.Value, Sentences.UpperFirst(caution.Text.Replace("{0}", Sentences.Listed(concerned), StringComparison.Ordinal)));

    /// <summary>What an occasion concerns, or null when it is not given.</summary>
    private IReadOnlyList<string>? Concerned(CautionOccasion occasion) => occasion switch
    {
        CautionOccasion.Always => [],
        CautionOccasion.SwingingClub => When(_drills.Any(d => d.Club != DrillClub.None)),
        CautionOccasion.HittingBalls => When(HitsBalls),
        CautionOccasion.Indoors => When(_drills.Count > 0 && Student.Room is Room.Home or Room.Net),
        CautionOccasion.Outdoors => When(_drills.Count > 0 && Student.Room is Room.Garden or Room.Range or Room.Course),
        CautionOccasion.FullSpeed => When(AtFullSpeed),
        CautionOccasion.Minor => When(at.Facts.Age < 18),
        CautionOccasion.UnderThirteen => When(at.Facts.Age < 13),
        CautionOccasion.LimitCurrent => Regions(LimitStatus.Current),
        CautionOccasion.LimitPast => Regions(LimitStatus.Past),
        CautionOccasion.LimitCleared => Regions(LimitStatus.Cleared),
        CautionOccasion.OnTheCourse => When(Student.Room == Room.Course && _rungs.Any(r => r.Stage is Stage.Half or Stage.Full)),
        CautionOccasion.ReadingsDisagree => TiltConsistency.Disagrees(at.Lesson.Findings) ? Names(f => TiltConsistency.Compared.Contains(f.Measure.Id) && !f.IsDerived) : null,
        >= CautionOccasion.StagesLeftOutRoom => _instead.Concerned(occasion),
        _ => OfReadings(occasion),
    };

    private bool AtFullSpeed => _rungs.Any(r => r.Stage >= Stage.Full);

    private bool HitsBalls => AtFullSpeed || _drills.Any(d => d.Kit.Contains(Kit.Ball));

    private List<string>? OfReadings(CautionOccasion occasion) => occasion switch
    {
        CautionOccasion.DeviceDoubtful => Names(f => f.Measure.Doubtful?.Contains(f.Value.Value) == false),
        CautionOccasion.InstrumentMismatch => Names(f => Taken(f) is { Instrument: not Instrument.Eye } t && !f.Measure.Instruments.Contains(t.Instrument)),
        CautionOccasion.HeightNeeded => Names(f => f.Range is not null && _context.NeedsHeight(f.Measure)),
        CautionOccasion.SlowVideo => Names(f => Taken(f) is { } t && GradingContext.IsSlowVideo(f.Measure, t)),
        _ => null,
    };

    private MeasuredValue? Taken(Finding finding)
    {
        foreach (var reading in at.Facts.Readings) if (reading.Measure.Value == finding.Measure.Id.Value) return reading;
        return null;
    }

    private static IReadOnlyList<string>? When(bool given) => given ? [] : null;

    private List<string>? Names(Func<Finding, bool> concerned) =>
        at.Lesson.Findings.Any(concerned) ? [.. at.Lesson.Findings.Where(concerned).Select(f => Sentences.LowerFirst(f.Measure.Name))] : null;

    private List<string>? Regions(LimitStatus status) => Student.Limits.Count == 0 ? null :
        Student.Limits.Where(l => l.Status == status).Select(l => l.Region).Distinct().Order().Select(r => Terms.Of(r).Replace('-', ' ')).ToList() is { Count: > 0 } regions ? regions : null;
}
