using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Tests.Properties;
using CsCheck;

namespace CoachOffice.Drafting.Tests.Drafting;

/// <summary>What a draft says in words.</summary>
public sealed class WordsTests
{
    [Fact]
    public void Our_own_sentences_never_order_about_nor_speak_of_the_person() =>
        RandomLessons.One.Sample(
            facts =>
            {
                var draft = Drafter.Draft(HouseBook.Compiled, facts);
                string[] ours = [.. draft.Focus.Where(f => f.Pattern is null).Select(f => f.Because), .. draft.MeasureNext.Select(n => n.Because), .. draft.Stages.Where(s => s.Gate.Kind is GateKind.Measure or GateKind.Coach).Select(s => s.Gate.Text)];
                Assert.All(ours, s => Assert.DoesNotMatch(@"\b(must|never|always|you)\b", s));
                Assert.All(ours, s => Assert.DoesNotContain("{", s, StringComparison.Ordinal));
            },
            iter: Drafted.Lessons / 2);

    [Fact]
    public void The_text_names_every_focus_and_every_reason() =>
        RandomLessons.One.Sample(
            facts =>
            {
                var draft = Drafter.Draft(HouseBook.Compiled, facts);
                var text = DraftText.Write(draft, HouseBook.Book);
                Assert.All(draft.Focus, f => Assert.Contains(f.Because, text, StringComparison.Ordinal));
                Assert.All(draft.Cautions, c => Assert.Contains(c.Text, text, StringComparison.Ordinal));
                Assert.All(draft.MeasureNext, n => Assert.Contains(n.Because, text, StringComparison.Ordinal));
            },
            iter: Drafted.Lessons / 3);

    [Fact]
    public void A_limit_of_today_is_named_and_deferred_to_a_professional()
    {
        var facts = HouseBook.Lesson(Club.Driver, HouseBook.Value("downswing-head-shift", 12));
        var draft = Drafter.Draft(HouseBook.Compiled, facts with { Student = facts.Student with { Limits = [new BodyLimit(Region.LowerBack, LimitStatus.Current)] } });
        var caution = draft.Cautions.Single(c => c.Id == "limit-current").Text;
        Assert.Contains("lower back", caution, StringComparison.Ordinal);
        Assert.Contains("licensed professional", caution, StringComparison.Ordinal);
    }

    [Fact]
    public void Doubtful_readings_are_named()
    {
        var draft = Drafter.Draft(HouseBook.Compiled, HouseBook.Lesson(Club.Driver,
            HouseBook.Value("smash-factor", 1.53), HouseBook.Value("impact-shaft-lean", -9) with { FrameRate = 60 }, HouseBook.Value("club-path", 1) with { Instrument = Instrument.TapeMeasure }));
        Assert.Superset(new HashSet<string> { "device-doubtful", "slow-video", "instrument-mismatch" }, draft.Cautions.Select(c => c.Id).ToHashSet());
    }

    [Fact]
    public void An_undecided_fault_is_worked_on_slowly_and_the_deciding_reading_comes_first()
    {
        var draft = Drafter.Draft(HouseBook.Compiled, HouseBook.Lesson(Club.Driver, HouseBook.Value("impact-spine-tilt", 12)));
        Assert.StartsWith("Provisional", draft.Focus.Single().Because, StringComparison.Ordinal);
        Assert.All(draft.Stages, s => Assert.InRange(s.Stage, Stage.Rehearse, Stage.Half));
        Assert.Contains(draft.Trace, t => t.Rule.StartsWith("near-miss:", StringComparison.Ordinal) && t.Facts.Contains($"{draft.MeasureNext[0].Measure} not measured"));
    }

    [Fact]
    public void A_debatable_direction_is_said_with_the_near_miss()
    {
        var draft = Drafter.Draft(HouseBook.Compiled, HouseBook.Lesson(Club.Iron, HouseBook.Value("shaft-over-plane", 18), HouseBook.Value("lag-angle", 125)));
        var pattern = HouseBook.Book.Find(PatternId.From("steep-then-throw"))!;
        Assert.Contains(pattern.Debatable, draft.Trace.Single(t => t.Rule == "near-miss:steep-then-throw").Facts);
    }

    [Fact]
    public void Two_pieces_of_work_in_vain_are_looked_at_again_first()
    {
        var facts = HouseBook.Lesson(Club.Iron, HouseBook.Value("shaft-over-plane", 18), HouseBook.Value("downswing-head-shift", 12)) with
        {
            Tried = [new TriedDrill(DrillId.From("falling-club"), 8, TriedOutcome.NoChange), new TriedDrill(DrillId.From("shadow-head"), 8, TriedOutcome.NoChange)],
        };
        Assert.Contains(Drafter.Draft(HouseBook.Compiled, facts).MeasureNext, n => n.Because.StartsWith("Work on it changed nothing", StringComparison.Ordinal));
    }
}
