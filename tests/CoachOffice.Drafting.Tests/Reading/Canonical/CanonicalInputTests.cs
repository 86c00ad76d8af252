using System.Security.Cryptography;
using System.Text;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Canonical;

using CoachOffice.Drafting.Tests.Reading.Lessons;

namespace CoachOffice.Drafting.Tests.Reading.Canonical;

public sealed class CanonicalInputTests
{
    private static readonly LessonFacts Facts = SmallLesson.Read(SmallLesson.Json).Value;

    [Fact]
    public void The_written_form_has_the_names_of_the_file_sorted_defaults_and_own_units() => Assert.Equal(
        string.Concat(
            "{'asOf':'2026-05-04','club':'driver','readings':[{'instrument':'video','measure':'head-shift','readings':1,'unit':'cm','value':5.08},",
            "{'frameRate':240,'instrument':'video','measure':'impact-spine-tilt','readings':3,'unit':'deg','value':14}],",
            "'student':{'birthYear':1988,'clubSpeedGoal':{'unit':'m/s','value':46.9392},'daysPerWeek':3,'goals':['distance','consistency'],'hand':'right','heightCm':180,",
            "'kit':['alignment-stick','mirror'],'level':'improver','limits':[{'region':'lower-back','status':'past'}],'minutesPerWeek':90,'room':'range'},",
            "'tried':[{'drill':'half-lean','outcome':'no-change','sessions':6}]}").Replace('\'', '"'),
        Encoding.UTF8.GetString(CanonicalInput.Write(Facts)));

    [Fact]
    public void The_hash_is_of_the_written_form() =>
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(CanonicalInput.Write(Facts))), CanonicalInput.Sha256(Facts));

    [Theory]
    [InlineData("\"value\": 2, \"unit\": \"in\"", "\"unit\": \"mm\", \"value\": 50.8")]
    [InlineData("\"value\": 14,", "\"value\": 14.0,")]
    [InlineData("\"instrument\": \"video\", ", "")]
    [InlineData("\"unit\": \"in\" }", "\"unit\": \"in\", \"readings\": 1 }")]
    public void The_same_meaning_has_the_same_hash(string old, string replacement) =>
        Assert.Equal(CanonicalInput.Sha256(Facts), CanonicalInput.Sha256(SmallLesson.With(old, replacement).Value));

    [Theory]
    [InlineData("\"value\": 14,", "\"value\": 14.1,")]
    [InlineData("\"readings\": 3", "\"readings\": 4")]
    [InlineData("\"frameRate\": 240", "\"frameRate\": 120")]
    [InlineData("\"right\"", "\"left\"")]
    [InlineData("[\"distance\", \"consistency\"]", "[\"consistency\", \"distance\"]")]
    [InlineData("\"heightCm\": 180,", "")]
    [InlineData("\"past\"", "\"current\"")]
    [InlineData("\"no-change\"", "\"worse\"")]
    [InlineData("2026-05-04", "2026-05-05")]
    public void Another_meaning_has_another_hash(string old, string replacement) =>
        Assert.NotEqual(CanonicalInput.Sha256(Facts), CanonicalInput.Sha256(SmallLesson.With(old, replacement).Value));
}
