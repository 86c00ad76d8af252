namespace CoachOffice.Domain.Tests;

public sealed class OneLineTests
{
    [Theory]
    [InlineData("Mara Feld", true)]
    [InlineData("", true)]
    [InlineData("מרה", true)]
    [InlineData("😀", true)]
    [InlineData("a\nb", false)]
    [InlineData("a\rb", false)]
    [InlineData("a\tb", false)]
    [InlineData("a\u007fb", false)]
    [InlineData("a\u2028b", false)]
    [InlineData("a\u2029b", false)]
    public void Nothing_breaks_the_line_or_controls_a_device(string text, bool fits) => Assert.Equal(fits, OneLine.Fits(text));

    // Unicode Standard Annex 9, directional formatting characters: embeddings and overrides U+202A to U+202E, isolates U+2066 to U+2069.
    [Theory]
    [InlineData(0x2029 - 2, true)]
    [InlineData(0x202A, false)]
    [InlineData(0x202C, false)]
    [InlineData(0x202E, false)]
    [InlineData(0x202F, true)]
    [InlineData(0x2065, true)]
    [InlineData(0x2066, false)]
    [InlineData(0x2069, false)]
    [InlineData(0x206A, true)]
    public void Nothing_turns_the_direction_of_what_follows(int mark, bool fits) => Assert.Equal(fits, OneLine.Fits($"Mara{(char)mark}Feld"));

    [Theory]
    [InlineData("M", true)]
    [InlineData(" .", true)]
    [InlineData("", false)]
    [InlineData(" \t\u00a0", false)]
    [InlineData("\u200b\u00ad", false)]
    [InlineData("\u0001", false)]
    public void At_least_one_character_can_be_seen(string text, bool shows) => Assert.Equal(shows, OneLine.Shows(text));
}
