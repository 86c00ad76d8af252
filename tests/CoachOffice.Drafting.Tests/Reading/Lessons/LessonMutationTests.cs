using System.Text;
using CoachOffice.Drafting.Reading.Lessons;
using CsCheck;

namespace CoachOffice.Drafting.Tests.Reading.Lessons;

/// <summary>Whatever one byte does to a lesson, the answer is facts or faults with a place; never an exception.</summary>
public sealed class LessonMutationTests
{
    private static readonly byte[] Lesson = Encoding.UTF8.GetBytes(SmallLesson.Json);

    [Fact]
    public void One_changed_byte_gives_facts_or_faults_with_a_place() => Gen.Select(Gen.Int[0, Lesson.Length - 1], Gen.Byte, Gen.Int[0, 2]).Sample(
        (index, letter, kind) =>
        {
            byte[] changed = kind switch
            {
                0 => [.. Lesson[..index], .. Lesson[(index + 1)..]],
                1 => [.. Lesson[..index], letter, .. Lesson[index..]],
                _ => [.. Lesson[..index], letter, .. Lesson[(index + 1)..]],
            };
            var result = LessonReader.Read("lesson.json", changed, SmallBook.Book);
            Assert.True(result.Succeeded || result.Faults.All(f => f.Line >= 1 && f.Column >= 1 && f.Message.Length > 0));
        },
        iter: 2000);
}
