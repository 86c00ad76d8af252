using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.FollowUps.Wordings;

namespace CoachOffice.UseCases.Tests.FollowUps.Wordings;

public sealed class CheckWordingTests
{
    private const string Link = "\n\n{{ link }}\n\n";

    private static readonly Letters Letters = new();
    private static readonly CheckWording Check = new(Letters);

    public static TheoryData<MessageKind> Kinds => [.. Enum.GetValues<MessageKind>()];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Shipped_words_hold_to_every_rule_that_own_words_are_held_to(MessageKind kind) => Assert.Empty(Check.Of(kind, Letters.Shipped(kind)));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Shipped_words_read_the_same_whether_they_are_shipped_or_written_again(MessageKind kind) =>
        Assert.All(LetterExamples.Of(kind), e => Assert.Equal(LetterBlock.Of(Letters.Above(kind, e.Facts, null)).Select(b => b.AsText), LetterBlock.Of(Letters.Above(kind, e.Facts, Letters.Shipped(kind))).Select(b => b.AsText)));

    [Theory]
    [InlineData(MessageKind.PracticeNudge)]
    [InlineData(MessageKind.WeeklyCheckIn)]
    public void An_encouragement_has_two_wordings(MessageKind kind) =>
        Assert.Equal(2, LetterExamples.Of(kind).Select(e => Letters.Above(kind, e.Facts, null)).Distinct(StringComparer.Ordinal).Count());

    [Theory]
    [InlineData("Hello {{ greeting }}, a word, because you could.{% if %}" + Link, "wording-unread")]
    [InlineData("Hello {{ gretting }}, a word, because you could." + Link, "wording-unknown")]
    [InlineData("Hello {{ student_id }}, a word, because you could." + Link, "wording-unknown")]
    [InlineData("Hello, a word, because you could.", "wording-link")]
    [InlineData("Hello, because you could: {{ link }}", "wording-link")]
    [InlineData("You must, because it helps; whether is your choice." + Link, "wording-words")]
    [InlineData("Hello, practise." + Link, "wording-words")]
    [InlineData("{% assign x = 'a' %}Hello, because you could." + Link, "wording-refused")]
    [InlineData("{% for i in (1..100000) %}x{% endfor %}Hello, because you could." + Link, "wording-refused")]
    [InlineData("{% include 'closing' %}Hello, because you could." + Link, "wording-refused")]
    [InlineData("{{ greeting | append: 'x' }} because you could." + Link, "wording-refused")]
    [InlineData("{% if for_guardian %}{% else %}You should, because you could.{% endif %}" + Link, "wording-words")]
    public void What_cannot_go_out_is_refused_with_what_to_mend(string body, string code)
    {
        var refusals = Check.Of(MessageKind.PracticeNudge, new LetterWords("{{ practice }}: a note", body));

        Assert.Contains(code, refusals.Select(r => r.Code));
        Assert.All(refusals, r => Assert.EndsWith(".", r.Sentence, StringComparison.Ordinal));
    }

    [Fact]
    public void Words_in_a_branch_no_example_reaches_are_judged_too()
    {
        var words = new LetterWords("A note", "Hello, because you could.{% if practice == 'Nowhere' %} You failed.{% endif %}" + Link);

        Assert.Equal(["wording-words"], Check.Of(MessageKind.PracticeNudge, words).Select(r => r.Code));
    }

    [Fact]
    public void A_letter_that_would_never_end_ends()
    {
        var loop = string.Concat(Enumerable.Repeat("{% for a in drills %}", 2)) + new string('x', 4000) + string.Concat(Enumerable.Repeat("{% endfor %}", 2));
        var facts = (LetterFacts)LetterExamples.Of(MessageKind.PracticeNudge)[0].Facts with { Drills = [.. Enumerable.Repeat("a", 2000)] };

        Assert.Throws<InvalidOperationException>(() => Letters.Render(MessageKind.PracticeNudge, facts, new LetterWords("s", loop)));
    }

    [Fact]
    public void Own_words_go_out_with_the_programs_own_closing_and_as_text_in_the_page()
    {
        var words = new LetterWords("A word for {{ greeting }}", "Hello {{ greeting }} <b>bold</b>, because you could." + Link);
        var facts = (LetterFacts)LetterExamples.Of(MessageKind.PracticeNudge)[0].Facts;

        var letter = Letters.Render(MessageKind.PracticeNudge, facts, words);

        Assert.Empty(Check.Of(MessageKind.PracticeNudge, words));
        Assert.Equal("A word for Nora", letter.Subject);
        Assert.Contains("Stop when something hurts", letter.Text, StringComparison.Ordinal);
        Assert.Contains(facts.StopLink, letter.Text, StringComparison.Ordinal);
        Assert.Contains("&lt;b&gt;bold", letter.Html, StringComparison.Ordinal);
    }
}
