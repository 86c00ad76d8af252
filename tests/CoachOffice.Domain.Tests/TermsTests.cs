using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;

namespace CoachOffice.Domain.Tests;

public sealed class TermsTests
{
    [Fact]
    public void A_member_is_written_in_small_letters_with_hyphens()
    {
        Assert.Equal("lower-back", Terms.Of(Region.LowerBack));
        Assert.Equal("lower-back", Terms.Of((Enum)Region.LowerBack));
        Assert.Equal("neck", Terms.Of(Region.Neck));
    }

    [Fact]
    public void A_number_that_is_no_member_is_written_as_itself() => Assert.Equal("99", Terms.Of((Region)99));

    [Fact]
    public void All_words_come_in_the_order_of_the_list() => Assert.Equal(["none", "low", "high"], Terms.All<Side>());

    [Theory]
    [InlineData("high", true)]
    [InlineData("High", false)]
    [InlineData("2", false)]
    [InlineData("", false)]
    [InlineData(null, false)]
    public void A_word_is_read_as_it_is_written_and_not_otherwise(string? word, bool read)
    {
        Assert.Equal(read, Terms.TryParse<Side>(word, out var side));
        Assert.Equal(read ? Side.High : default, side);
    }

    [Fact]
    public void A_word_known_to_be_good_is_a_defect_when_it_is_not()
    {
        Assert.Equal(Side.Low, Terms.Parse<Side>("low"));
        Assert.Throws<FormatException>(() => Terms.Parse<Side>("lower"));
    }
}
