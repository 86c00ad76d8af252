using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Tests.Students;

public sealed class AgesTests
{
    [Theory]
    [InlineData("2026-05-03", 17)]
    [InlineData("2026-05-04", 18)]
    [InlineData("2027-05-03", 18)]
    public void Years_are_completed_on_the_birthday(string day, int age)
    {
        var born = new LocalDate(2008, 5, 4);
        var on = NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value;
        Assert.Equal((age, age < 18), (Ages.On(born, on), Ages.IsMinor(born, on)));
    }

    [Theory]
    [InlineData(28, 18)]
    [InlineData(27, 17)]
    public void Who_was_born_on_a_leap_day_is_a_year_older_on_the_last_of_February(int day, int age) =>
        Assert.Equal(age, Ages.On(new LocalDate(2008, 2, 29), new LocalDate(2026, 2, day)));
}
