using System.Text;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Students.Imports;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Students;

/// <summary>All students as a list (RFC 4180, section 2), safe for a spreadsheet (OWASP ASVS 5.0.0 V1.2.10; the characters of OWASP's page on CSV injection with the line feed).</summary>
public abstract class ExportStudentsTests(OfficeFixture fixture)
{
    [Fact]
    public async Task Taken_out_and_brought_into_an_empty_practice_every_student_is_the_same()
    {
        var (from, into) = (await fixture.Another(opened: true), await fixture.Another(opened: true));
        StudentDetails[] all =
        [
            AStudent.Named("Anna \"Ace\"", "Berg, von") with { Notes = "first line\r\nsecond; \"quoted\", with comma", Height = new Quantity(171.45, Unit.Centimetre), ClubSpeedGoal = new Quantity(44.704, Unit.MetrePerSecond) },
            AStudent.Named("=1+1", "'=already") with { Email = "a@example.org", Phone = "+44 1632 960 009", Notes = "@SUM(A1)" },
            AStudent.Named("-2+3", "''quoted") with { Email = "b@example.org", Notes = "'tis no formula", Hand = Hand.Left, Level = Level.Elite, Goals = [], Kit = [] },
            AStudent.Junior("Žofie", "Dvořáková").WithLimit(Region.LowerBack) with { Room = Room.Home, MinutesPerWeek = 0, DaysPerWeek = 0 },
            AStudent.Named("Bo", "Twin") with { Email = "shared@example.org", BirthDate = null },
            AStudent.Named("Cy", "Twin") with { Email = "shared@example.org", BirthDate = null, Limits = [Told(Region.Neck, "letter; of 2\\3"), Told(Region.Foot, "")] },
            AStudent.Named("李", "小龙") with { Email = "" },
        ];
        foreach (var details in all) await from.Register(details);
        await from.Change(async db =>
        {
            var twins = await db.Students.Where(s => s.FamilyName == "Twin").OrderBy(s => s.GivenName).ToListAsync();
            twins[0].Archive(from.Now);
            twins[1].Stop(MessagePurpose.Encouragement, from.Now);
        });

        var bytes = await from.Must((ExportStudents export) => export.All(from.Owner));
        var desk = new BringingAList(into);
        var file = (await desk.Tries(bytes)).Value;
        var said = await desk.Says(file.Id, (await desk.Columns(file.Id)).Form);
        Assert.True(said.Succeeded, string.Join("; ", said.Refusals.Select(r => r.Sentence)));
        await desk.BringsIn(file.Id);

        Assert.Equal(await Everyone(from), await Everyone(into));
        Assert.Equal(bytes, await into.Must((ExportStudents export) => export.All(into.Owner)));
    }

    [Fact]
    public async Task Texts_a_spreadsheet_would_run_are_disarmed_numbers_are_not_and_rows_end_as_rfc_4180_says()
    {
        var office = await fixture.Another(opened: true);
        await office.Register(AStudent.Named("=1+1", "@SUM(A1)") with { Email = "", Phone = "+1", Notes = "-2+3", MinutesPerWeek = 15, Height = new Quantity(170.5, Unit.Centimetre), BirthDate = null, Goals = [], Kit = [] });

        var text = Encoding.UTF8.GetString(await office.Must((ExportStudents export) => export.All(office.Owner)));

        Assert.EndsWith("\r\n'=1+1,'@SUM(A1),,'+1,,,,,,right,improver,,,range,15,3,170.5,,,'-2+3,no,no\r\n", text, StringComparison.Ordinal);
        Assert.StartsWith("\ufeffGiven name,Family name,Mail,Phone,Birth date,", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Only_an_owner_takes_them_out_and_the_history_says_so_without_a_name()
    {
        var office = await fixture.Another(opened: true);
        await office.Register(AStudent.Named("Anna", "Berg"));
        var gone = await office.Register(AStudent.Named("Bo", "Gone"));
        await office.Must((EraseStudent erase) => erase.ForGood(gone, office.Owner));

        Assert.Equal(NotAllowed.Code, (await office.Refuses((ExportStudents export) => export.All(office.Coach))).Single().Code);
        var text = Encoding.UTF8.GetString(await office.Must((ExportStudents export) => export.All(office.Owner)));

        Assert.DoesNotContain("Former", text, StringComparison.Ordinal);
        Assert.Equal("students:1", (await office.Read(db => db.AuditEntries.SingleAsync(a => a.Action == "students-exported"))).Detail);
    }

    private static StudentLimit Told(Region region, string source) => new() { Region = region, Status = LimitStatus.Past, NotedOn = new LocalDate(2025, 12, 31), Source = source };

    private static Task<List<string>> Everyone(TestOffice office) => office.Read(async db =>
        (await db.Students.OrderBy(s => s.SearchText).ThenBy(s => s.GivenName).ToListAsync()).ConvertAll(s => $"{System.Text.Json.JsonSerializer.Serialize(s.Details() with { Limits = [], Height = null, ClubSpeedGoal = null, BirthDate = null })} {s.BirthDate} {s.HeightCm} {s.ClubSpeedGoalMetresPerSecond} {string.Join('|', s.Limits)} {s.ArchivedAt is null} {s.MessagesStoppedAt is null}"));
}

public sealed class ExportStudentsOnSqlite(SqliteOffice office) : ExportStudentsTests(office), IClassFixture<SqliteOffice>;

public sealed class ExportStudentsOnPostgreSql(PostgreSqlOffice office) : ExportStudentsTests(office), IClassFixture<PostgreSqlOffice>;
