using CoachOffice.Data.Students;
using CoachOffice.UseCases.Students.Merging;
using CoachOffice.UseCases.Tests.Fixtures;

namespace CoachOffice.UseCases.Tests.Students.Merging;

/// <summary>A new column that names a student must be decided upon: either its rows simply change hands when two records become one, or more is to be thought of.</summary>
public sealed class StudentTiesTests(SqliteOffice fixture) : IClassFixture<SqliteOffice>
{
    [Fact]
    public async Task Every_column_that_names_a_student_is_moved_by_a_merge()
    {
        var ties = await fixture.Office.Read(db => Task.FromResult(StudentTies.All(db)));

        Assert.Equal(ties.Select(t => t.ToString()), MergeMoves.Plain.Concat(MergeMoves.WithCare).Select(t => t.ToString()).Order(StringComparer.Ordinal));
    }
}
