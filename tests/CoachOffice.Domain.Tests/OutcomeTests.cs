namespace CoachOffice.Domain.Tests;

public sealed class OutcomeTests
{
    private static readonly Refusal No = new("not-today", "Come back tomorrow.");

    [Fact]
    public void A_success_holds_its_value_and_no_refusal()
    {
        Outcome<int> outcome = 7;
        Assert.Equal((true, 7), (outcome.Succeeded, outcome.Value));
        Assert.Empty(outcome.Refusals);
        Assert.True(outcome.TryGet(out var value));
        Assert.Equal(7, value);
    }

    [Fact]
    public void A_refusal_holds_its_reason_and_asking_for_its_value_throws_it()
    {
        Outcome<int> outcome = No;
        Assert.False(outcome.Succeeded);
        Assert.Same(No, Assert.Single(outcome.Refusals));
        Assert.False(outcome.TryGet(out _));
        Assert.Contains("not-today", Assert.Throws<InvalidOperationException>(() => outcome.Value).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Several_refusals_of_one_form_come_together() => Assert.Equal([No, No], Outcome<int>.Refused([No, No]).Refusals);

    [Fact]
    public void A_refusal_without_a_reason_is_a_defect() => Assert.Throws<ArgumentException>(() => Outcome<int>.Refused([]));

    [Fact]
    public void An_interface_is_a_value_too()
    {
        IReadOnlyList<int> list = [1];
        Assert.Same(list, Outcome<IReadOnlyList<int>>.Of(list).Value);
    }
}
