using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Domain.Students;

namespace CoachOffice.Drafting.Tests.Drafting;

/// <summary>The ordering of work on invented books small enough to see through.</summary>
public sealed class OrderingTests
{
    private static TinyBook Chain => new TinyBook().Measure("early", Moment.Top).Measure("middle", Moment.LeadArmParallel).Measure("late", Moment.Impact).Measure("ball", Moment.Finish, outcome: true);

    [Fact]
    public void Links_of_one_chain_all_stand_and_only_the_first_is_worked_on()
    {
        var draft = Draft(Chain.Pattern("one", 1, "early.high", ["middle.high"]).Pattern("two", 2, "middle.high", ["late.low"]), ("early", 20), ("middle", 18), ("late", -8));
        Assert.Equal(["one", "two"], draft.Causes.Select(c => c.Pattern));
        Assert.Equal("early.high", draft.Focus.Single().Fault.ToString());
        Assert.Equal(["middle.high explained-by early.high", "late.low explained-by middle.high"], Parked(draft));
    }

    [Fact]
    public void Of_two_patterns_that_rival_each_other_the_one_named_under_over_gives_way()
    {
        var rivals = Chain.Pattern("strong", 5, "early.high", ["late.low"], over: ["weak"]).Pattern("weak", 1, "middle.high", ["late.low"]);
        Assert.Equal(["strong"], Draft(rivals, ("early", 20), ("middle", 18), ("late", -8)).Causes.Select(c => c.Pattern));
        var links = Chain.Pattern("strong", 5, "early.high", ["middle.high"], over: ["weak"]).Pattern("weak", 1, "middle.high", ["late.low"]);
        Assert.Equal(["weak", "strong"], Draft(links, ("early", 20), ("middle", 18), ("late", -8)).Causes.Select(c => c.Pattern));
    }

    [Fact]
    public void Nothing_is_explained_by_a_later_moment()
    {
        var draft = Draft(Chain.Pattern("back", 1, "late.high", ["early.high"]), ("late", 20), ("early", 18));
        Assert.Empty(draft.Causes.Single().Explains);
        Assert.Contains(draft.Trace, t => t.Rule == "causes:earlier-moment");
        Assert.Equal(2, draft.Focus.Count);
    }

    [Fact]
    public void A_circle_is_opened_at_its_weakest_edge()
    {
        var book = new TinyBook().Measure("a", Moment.Impact).Measure("b", Moment.Impact).Pattern("strong", 1, "a.high", ["b.high"]).Pattern("weak", 2, "b.high", ["a.high"]);
        var draft = Draft(book, ("a", 20), ("b", 20));
        Assert.Equal("a.high", draft.Focus.Single().Fault.ToString());
        Assert.Equal(["b.high -> a.high by weak"], draft.Trace.Single(t => t.Rule == "causes:circle").Facts);
    }

    [Fact]
    public void The_cause_reported_is_the_one_of_least_precedence()
    {
        var draft = Draft(Chain.Pattern("later", 9, "early.high", ["late.low"]).Pattern("sooner", 3, "middle.high", ["late.low"]), ("early", 20), ("middle", 18), ("late", -8));
        Assert.Contains("late.low explained-by middle.high", Parked(draft));
        Assert.Equal(2, draft.Causes.Count);
    }

    [Fact]
    public void A_root_at_address_comes_before_a_larger_fault()
    {
        var book = Chain.Measure("setup", Moment.Address, style: true).Pattern("set-up", 1, "setup.low", ["late.low"]);
        Assert.Equal(["setup.low", "middle.high"], Focus(Draft(book, ("setup", -4), ("late", -8), ("middle", 30))));
    }

    [Fact]
    public void Style_without_a_pattern_is_never_worked_on()
    {
        var draft = Draft(Chain.Measure("setup", Moment.Address, style: true), ("setup", -20));
        Assert.Empty(draft.Focus);
        Assert.Equal(["setup.low no-harm-shown"], Parked(draft));
    }

    [Fact]
    public void A_mild_fault_without_a_pattern_is_too_small() => Assert.Equal(["middle.high too-small"], Parked(Draft(Chain, ("middle", 12))));

    [Fact]
    public void What_waits_comes_second_and_says_so()
    {
        var draft = Draft(Chain.After("late", "middle"), ("late", 30), ("middle", 17));
        Assert.Equal(["middle.high", "late.high"], Focus(draft));
        Assert.Equal(["middle.high"], draft.Focus[1].After.Select(f => f.ToString()));
    }

    [Fact]
    public void What_waits_for_two_others_is_parked_behind_the_first_the_law_names()
    {
        var draft = Draft(Chain.After("late", "middle", "early"), ("late", 30), ("middle", 17), ("early", 17));
        Assert.Equal(["early.high", "middle.high"], Focus(draft));
        Assert.Equal(["late.high train-after middle.high"], Parked(draft));
    }

    [Fact]
    public void What_one_pattern_forbids_is_not_worked_on_beside_it()
    {
        var draft = Draft(Chain.Pattern("one", 1, "early.high", ["middle.high"], forbids: ["late.low"]), ("early", 30), ("middle", 20), ("late", -8));
        Assert.Equal(["early.high"], Focus(draft));
        Assert.Equal(["late.low: opposite to early.high"], draft.Trace.Where(t => t.Rule == "pick:skip").SelectMany(t => t.Facts));
    }

    [Fact]
    public void Where_precedence_does_not_tell_the_name_does()
    {
        var draft = Draft(Chain.Pattern("beta", 5, "early.high", ["late.low"]).Pattern("alpha", 5, "middle.high", ["late.low"]), ("early", 20), ("middle", 18), ("late", -8));
        Assert.Contains("late.low explained-by middle.high", Parked(draft));
        var circle = new TinyBook().Measure("a", Moment.Impact).Measure("b", Moment.Impact).Pattern("one", 1, "a.high", ["b.high"]).Pattern("two", 1, "b.high", ["a.high"]);
        Assert.Equal(["b.high -> a.high by two"], Draft(circle, ("a", 20), ("b", 20)).Trace.Single(t => t.Rule == "causes:circle").Facts);
    }

    [Theory]
    [InlineData(Level.Beginner, 90, 1988, 1)]
    [InlineData(Level.Improver, 90, 1988, 2)]
    [InlineData(Level.Improver, 36, 1988, 2)]
    [InlineData(Level.Improver, 35, 1988, 1)]
    [InlineData(Level.Improver, 90, 2013, 1)]
    [InlineData(Level.Improver, 90, 2012, 2)]
    public void A_second_focus_wants_experience_time_and_age(Level level, int minutes, int birthYear, int focuses)
    {
        var facts = Facts(("early", 20), ("late", -12));
        var student = facts.Student with { Level = level, MinutesPerWeek = minutes, BirthYear = birthYear };
        Assert.Equal(focuses, Drafter.Draft(Chain.Compile(), facts with { Student = student }).Focus.Count);
    }

    [Fact]
    public void An_unread_blocker_fires_first_when_it_holds()
    {
        var book = Chain.Pattern("a-late", 1, "late.low", ["ball.low"], unless: ["z-early"]).Pattern("z-early", 2, "early.high", ["middle.high"]);
        Assert.Equal(["z-early"], Draft(book, ("early", 20), ("middle", 18), ("late", -8), ("ball", -8)).Causes.Select(c => c.Pattern));
        Assert.Equal(["a-late"], Draft(book, ("late", -8), ("ball", -8)).Causes.Select(c => c.Pattern));
    }

    private static string[] Focus(Draft draft) => [.. draft.Focus.Select(f => f.Fault.ToString())];

    private static string[] Parked(Draft draft) => [.. draft.Parked.Select(p => $"{p.Fault} {Domain.Terms.Of(p.Reason)} {p.By}".TrimEnd())];

    private static Draft Draft(TinyBook book, params (string Measure, double Value)[] readings) => Drafter.Draft(book.Compile(), Facts(readings));

    private static LessonFacts Facts(params (string Measure, double Value)[] readings) =>
        HouseBook.Lesson(Club.Iron, [.. readings.Select(r => new MeasuredValue { Measure = MeasureId.From(r.Measure), Value = new Quantity(r.Value, Unit.Degree) })]);
}
