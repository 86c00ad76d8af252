using CoachOffice.Domain.FollowUps;

namespace CoachOffice.Domain.Tests.FollowUps;

/// <summary>Rules after Teixeira et al. (2020), Motivation Science 6(4), 438-455, doi 10.1037/mot0000172: a meaningful rationale, choice, non-controlling language; the words are our own judgement.</summary>
public sealed class WordingLintTests
{
    private const string Free = "Hello,\n\na few short sessions tend to hold, because the body forgets slowly. You could pick a day.";

    [Theory]
    [InlineData("You must practise three times.", WordingRule.Pressure, "must")]
    [InlineData("You SHOULD come.", WordingRule.Pressure, "should")]
    [InlineData("Don't forget the drill.", WordingRule.Pressure, "don't forget")]
    [InlineData("Hurry, two places left.", WordingRule.Urgency, "hurry")]
    [InlineData("We were disappointed to see no note.", WordingRule.Guilt, "disappointed")]
    [InlineData("You missed a week.", WordingRule.Guilt, "you missed")]
    [InlineData("You do better than most.", WordingRule.Comparison, "better than")]
    [InlineData("Other students logged five days.", WordingRule.Comparison, "other students")]
    [InlineData("Your streak is at risk.", WordingRule.Chain, "streak")]
    [InlineData("Three days in a row.", WordingRule.Chain, "in a row")]
    [InlineData("It cures a sore wrist.", WordingRule.Health, "cures")]
    public void Words_that_press_blame_compare_or_promise_are_found(string sentence, WordingRule rule, string words)
    {
        var faults = WordingLint.Of(sentence, [new WordingReader(Free, false)], MessagePurpose.Encouragement);

        Assert.Equal([new WordingFault(rule, words)], faults);
        Assert.Contains(words, faults[0].Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("A mustard field.")]
    [InlineData("The shoulder turns.")]
    [InlineData("A failsafe net.")]
    [InlineData("Whether and when is your choice.")]
    [InlineData("The appointment stands.")]
    public void Parts_of_other_words_are_left_alone(string sentence) =>
        Assert.Empty(WordingLint.Of(sentence, [new WordingReader(Free, false)], MessagePurpose.Encouragement));

    [Fact]
    public void An_encouragement_gives_a_reason_and_leaves_a_choice()
    {
        var faults = WordingLint.Of("", [new WordingReader("Hello, practise today.", false)], MessagePurpose.Encouragement);

        Assert.Equal([WordingRule.NoReason, WordingRule.NoChoice], faults.Select(f => f.Rule));
        Assert.Empty(WordingLint.Of("", [new WordingReader("Hello, practise today.", false)], MessagePurpose.Appointment));
    }

    [Fact]
    public void What_is_true_of_a_row_of_lessons_is_no_chain_of_days() =>
        Assert.Empty(WordingLint.Of("Four lessons in a row are booked.", [new WordingReader("Four lessons in a row are booked.", false)], MessagePurpose.Appointment));

    [Fact]
    public void No_parent_is_made_to_push_a_child()
    {
        var read = new WordingReader("Please encourage Kit to practise.", true);

        Assert.Equal([new WordingFault(WordingRule.Minor, "encourage")], WordingLint.Of("", [read], MessagePurpose.Plan));
        Assert.Empty(WordingLint.Of("", [read with { ForGuardian = false }], MessagePurpose.Plan));
    }
}
