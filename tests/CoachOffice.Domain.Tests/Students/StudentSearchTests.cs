using CoachOffice.Domain.Students;

namespace CoachOffice.Domain.Tests.Students;

public sealed class StudentSearchTests
{
    [Theory]
    [InlineData("Søren", "soren")]
    [InlineData("SØREN", "soren")]
    [InlineData("Łukasz", "lukasz")]
    [InlineData("Đặng", "dang")]
    [InlineData("Strauß", "strauss")]
    [InlineData("STRAUẞ", "strauss")]
    [InlineData("Æsa", "aesa")]
    [InlineData("Lebœuf", "leboeuf")]
    [InlineData("Þóra", "thora")]
    [InlineData("Guðrún", "gudrun")]
    [InlineData("Işık", "isik")]
    [InlineData("İpek", "ipek")]
    [InlineData("Zoë  Čapek", "zoe capek")]
    public void A_name_is_found_by_plain_letters(string name, string folded)
    {
        Assert.Equal(folded, StudentSearch.Fold(name));
        Assert.Equal(folded, StudentSearch.Fold(StudentSearch.Fold(name)));
    }

    [Theory]
    [InlineData("  Mara\tFeld \n", "mara feld")]
    [InlineData("\u0001", "")]
    [InlineData("ĦŦŊ", "htn")]
    [InlineData("Ída", "ida")]
    public void White_space_and_signs_that_cannot_be_seen_are_one_space_or_none(string typed, string folded) => Assert.Equal(folded, StudentSearch.Fold(typed));

    [Fact]
    public void Parts_that_are_empty_leave_no_hole() => Assert.Equal("feld mara", StudentSearch.TextOf("Feld", "", "Mara", ""));

    [Fact]
    public void Half_a_character_is_replaced_and_does_not_throw()
    {
        Assert.Equal("Mara\ufffd", StudentSearch.Whole("Mara" + (char)0xD83D));
        Assert.Equal("mara\ufffd", StudentSearch.Fold("Mara" + (char)0xD83D));
        Assert.Equal("Mara 😀", StudentSearch.Whole("Mara 😀"));
    }
}
