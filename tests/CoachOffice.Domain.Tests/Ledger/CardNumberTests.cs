using CoachOffice.Domain.Ledger;

namespace CoachOffice.Domain.Tests.Ledger;

/// <summary>Luhn's formula, ISO/IEC 7812-1 annex B. The numbers are the test numbers card schemes publish (from memory); 79927398713 is the usual worked example, one digit too short for a card.</summary>
public sealed class CardNumberTests
{
    [Theory]
    [InlineData("4111111111111111")]
    [InlineData("4111 1111 1111 1111")]
    [InlineData("card 5555-5555-5555-4444, paid")]
    [InlineData("378282246310005")]
    [InlineData("4222222222222")]
    [InlineData("6304 0000 0000 0000 0000")]
    [InlineData("00004111111111111111000")]
    [InlineData("\uFF14\uFF11\uFF11\uFF11 1111 1111 1111")]
    [InlineData("4111\u00A01111\u20131111.1111")]
    public void What_could_be_a_card_is_seen(string text) => Assert.True(CardNumbers.LooksLikeOne(text));

    [Theory]
    [InlineData("")]
    [InlineData("Terminal 3, receipt 004512")]
    [InlineData("79927398713")]
    [InlineData("4111111111111112")]
    [InlineData("4111/1111/1111/1111")]
    [InlineData("2026-03-02 14:05")]
    public void References_of_a_terminal_pass(string text) => Assert.False(CardNumbers.LooksLikeOne(text));
}
