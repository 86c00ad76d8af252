using System.Globalization;
using CoachOffice.Domain.Plans.Drafts;
using CsCheck;

namespace CoachOffice.Drafting.Tests.Properties;

public sealed class CultureTests
{
    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void The_language_of_the_machine_never_shows(string culture) => RandomLessons.One.Sample(facts =>
    {
        var plain = (DraftJson.Text(Drafter.Draft(HouseBook.Compiled, facts)), DraftText.Write(Drafter.Draft(HouseBook.Compiled, facts), HouseBook.Book));
        var before = Thread.CurrentThread.CurrentCulture;
        Thread.CurrentThread.CurrentCulture = CultureInfo.GetCultureInfo(culture);
        try
        {
            Assert.Equal(plain, (DraftJson.Text(Drafter.Draft(HouseBook.Compiled, facts)), DraftText.Write(Drafter.Draft(HouseBook.Compiled, facts), HouseBook.Book)));
        }
        finally
        {
            Thread.CurrentThread.CurrentCulture = before;
        }
    }, iter: Drafted.Lessons / 5);
}
