using System.Text;
using CoachOffice.Drafting.Reading.Lessons;
using CoachOffice.Drafting.Tests.Reading;
using CoachOffice.Drafting.Tests.Reading.Lessons;

namespace CoachOffice.Drafting.Tests.Regressions;

/// <summary>A tilt of 999 was asked whether it had been read from the ground, which would have been a tilt of 909.</summary>
public sealed class GroundHintTests
{
    [Theory]
    [InlineData("102", true)]
    [InlineData("999", false)]
    public void The_ground_is_offered_only_where_it_would_explain_the_value(string value, bool offered)
    {
        var text = SmallLesson.Json.Replace("\"value\": 14,", $"\"value\": {value},", StringComparison.Ordinal);

        var fault = Assert.Single(LessonReader.Read("lesson.json", Encoding.UTF8.GetBytes(text), SmallBook.Book).Faults);

        Assert.Equal(offered, fault.Message.Contains("from the ground", StringComparison.Ordinal));
    }
}
