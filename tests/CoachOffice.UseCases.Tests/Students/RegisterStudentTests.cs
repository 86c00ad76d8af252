using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Students;

public abstract class RegisterStudentTests(OfficeFixture fixture)
{
    [Fact]
    public async Task Everything_entered_is_read_back_as_it_was()
    {
        var office = fixture.Office;
        var details = AStudent.Junior("Ylva", "Åkerström").WithLimit(Region.LeadWrist) with { Notes = "Left-eye dominant.", Height = new(150, Domain.Measuring.Unit.Centimetre) };

        var id = await office.Register(details);

        var student = await office.Do((ReadStudent read) => read.Of(id));
        Assert.Equal(("Ylva Åkerström", 1, office.Now), (student!.FullName, student.Version, student.AddedAt));
        Assert.Equal(details.Guardian, student.Guardian);
        Assert.Equal(details.Goals, student.Goals);
        Assert.Equal(details.Kit, student.Kit);
        Assert.Equal(details.Limits, student.Limits);
        Assert.Equal((details.BirthDate, 150.0), (student.BirthDate, student.HeightCm));
        Assert.Equal("akerstrom ylva", student.SearchText);
        Assert.True(student.RecipientOn(new LocalDate(2026, 3, 2))!.IsGuardian);
    }

    [Fact]
    public async Task A_minor_without_a_guardian_is_refused_and_nothing_is_kept()
    {
        var office = fixture.Office;
        var before = await office.Read(db => db.Students.CountAsync());

        var refusals = await office.Refuses((RegisterStudent r) => r.From(AStudent.Junior("Tim", "Alone") with { Guardian = null }, office.Desk));

        Assert.Contains(refusals, r => r is { Code: "guardian-needed", Field: "Guardian.Name" });
        Assert.Equal(before, await office.Read(db => db.Students.CountAsync()));
    }

    [Theory]
    [InlineData("phone", "student-phone")]
    [InlineData("notes", "student-notes")]
    [InlineData("zero", "student-text")]
    [InlineData("half", "student-text")]
    public async Task A_text_no_database_could_keep_is_refused_with_a_sentence(string what, string code)
    {
        var named = AStudent.Named("Odd", "Text");
        var details = what switch
        {
            "phone" => named with { Phone = new string('1', 10_000) },
            "notes" => named with { Notes = new string('n', 10_000_000) },
            "zero" => named with { FamilyName = "Te\0xt" },
            _ => named with { Notes = "half a smile \ud83d" },
        };

        var refusals = await fixture.Office.Refuses((RegisterStudent r) => r.From(details, fixture.Office.Owner));

        Assert.Equal(code, refusals.Single().Code);
    }

    [Fact]
    public async Task A_form_posted_twice_adds_one_student()
    {
        var office = fixture.Office;
        var id = StudentId.From(new SeededIds(5).Next());
        var details = AStudent.Named("Posted", "Twice");

        var both = await Task.WhenAll(
            Task.Run(() => office.Must((RegisterStudent r) => r.From(id, details, office.Coach))),
            Task.Run(() => office.Must((RegisterStudent r) => r.From(id, details, office.Coach))));

        Assert.Equal([id, id], both);
        Assert.Equal(1, await office.Read(db => db.Students.CountAsync(s => s.FamilyName == "Twice")));
        Assert.Equal(1, await office.Read(db => db.AuditEntries.CountAsync(a => a.SubjectId == id.Value)));
    }
}

public sealed class RegisterStudentOnSqlite(SqliteOffice office) : RegisterStudentTests(office), IClassFixture<SqliteOffice>;

public sealed class RegisterStudentOnPostgreSql(PostgreSqlOffice office) : RegisterStudentTests(office), IClassFixture<PostgreSqlOffice>;
