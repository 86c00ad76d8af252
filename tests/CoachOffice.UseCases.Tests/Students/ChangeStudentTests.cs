using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Tests.Fixtures;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Students;

public abstract class ChangeStudentTests(OfficeFixture fixture)
{
    [Fact]
    public async Task A_change_raises_the_version_and_keeps_the_rest()
    {
        var office = fixture.Office;
        var details = AStudent.Named("Nora", "Quill");
        var id = await office.Register(details);

        await office.Must((ChangeStudent change) => change.To(id, 1, details with { Phone = "+44 1632 960 777" }, office.Desk));

        var student = await office.Do((ReadStudent read) => read.Of(id));
        Assert.Equal((2, "+44 1632 960 777", "Nora Quill"), (student!.Version, student.Phone, student.FullName));
        Assert.Contains("960 777", student.SearchText, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_second_of_two_editors_is_told_who_was_first_and_sees_both_values()
    {
        var office = fixture.Office;
        var details = AStudent.Named("Petra", "Voss");
        var id = await office.Register(details);
        office.Time.Advance(TimeSpan.FromMinutes(5));
        await office.Must((ChangeStudent change) => change.To(id, 1, details with { Phone = "111", MinutesPerWeek = 45 }, office.Desk));

        var refusals = await office.Refuses((ChangeStudent change) => change.To(id, 1, details with { Phone = "222" }, office.Coach));

        Assert.All(refusals, r => Assert.Equal(Clash.Code, r.Code));
        Assert.Contains("Dora Desk", refusals[0].Sentence, StringComparison.Ordinal);
        Assert.Equal(
            ["Phone: saved is '111', yours is '222'.", "Minutes a week: saved is '45', yours is '120'."],
            refusals.Skip(1).Select(r => r.Sentence));
        Assert.Equal(["Phone", "MinutesPerWeek"], refusals.Skip(1).Select(r => r.Field));
        Assert.Equal("111", (await office.Do((ReadStudent read) => read.Of(id)))!.Phone);
    }

    [Fact]
    public async Task Of_many_editors_at_the_same_moment_one_wins_and_none_is_lost_silently()
    {
        var office = fixture.Office;
        var details = AStudent.Named("Race", "Track");
        var id = await office.Register(details);

        var outcomes = await Task.WhenAll(Enumerable.Range(1, 8).Select(n => Task.Run(
            () => office.Do((ChangeStudent change) => change.To(id, 1, details with { Phone = $"{n}" }, office.Coach)))));

        Assert.Single(outcomes, o => o.Succeeded);
        Assert.All(outcomes.Where(o => !o.Succeeded), o => Assert.Equal(Clash.Code, o.Refusals[0].Code));
        Assert.Equal(2, (await office.Do((ReadStudent read) => read.Of(id)))!.Version);
    }

    [Fact]
    public async Task An_unknown_student_is_not_found()
    {
        var refusals = await fixture.Office.Refuses(
            (ChangeStudent change) => change.To(StudentId.From(new SeededIds(99).Next()), 1, AStudent.Named("No", "Body"), fixture.Office.Owner));

        Assert.Equal("student-not-found", refusals.Single().Code);
    }

    [Fact]
    public async Task An_archived_student_comes_back_unchanged()
    {
        var office = fixture.Office;
        var id = await office.Register(AStudent.Named("Archie", "Vault"));

        await office.Must((ArchiveStudent archive) => archive.Now(id, office.Desk));
        Assert.Equal(office.Now, (await office.Do((ReadStudent read) => read.Of(id)))!.ArchivedAt);
        await office.Must((RestoreStudent restore) => restore.Now(id, office.Desk));

        var student = await office.Do((ReadStudent read) => read.Of(id));
        Assert.Null(student!.ArchivedAt);
        Assert.Equal(3, student.Version);
    }
}

public sealed class ChangeStudentOnSqlite(SqliteOffice office) : ChangeStudentTests(office), IClassFixture<SqliteOffice>;

public sealed class ChangeStudentOnPostgreSql(PostgreSqlOffice office) : ChangeStudentTests(office), IClassFixture<PostgreSqlOffice>;
