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
}
