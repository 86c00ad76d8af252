using System.Text;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Reading.Lessons;

namespace CoachOffice.Drafting.Tests.Reading.Lessons;

/// <summary>A sound lesson for the small book, with every field in it, to be changed by tests.</summary>
public static class SmallLesson
{
    public const string Json = """
        { "asOf": "2026-05-04",
          "student": { "hand": "right", "level": "improver", "birthYear": 1988, "goals": ["distance", "consistency"], "minutesPerWeek": 90, "daysPerWeek": 3,
                       "kit": ["alignment-stick", "mirror"], "room": "range", "heightCm": 180,
                       "limits": [ { "region": "lower-back", "status": "past" } ], "clubSpeedGoal": { "value": 105, "unit": "mph" } },
          "club": "driver",
          "readings": [ { "measure": "impact-spine-tilt", "value": 14, "unit": "deg", "readings": 3, "instrument": "video", "frameRate": 240 },
                        { "measure": "head-shift", "value": 2, "unit": "in" } ],
          "tried": [ { "drill": "half-lean", "sessions": 6, "outcome": "no-change" } ] }
        """;

    public static ReadResult<LessonFacts> Read(string json) => LessonReader.Read("lesson.json", Encoding.UTF8.GetBytes(json), SmallBook.Book);

    /// <summary>The lesson with one text replaced; the text must be there exactly once.</summary>
    public static ReadResult<LessonFacts> With(string old, string replacement)
    {
        Assert.Equal(2, Json.Split(old).Length);
        return Read(Json.Replace(old, replacement, StringComparison.Ordinal));
    }
}
