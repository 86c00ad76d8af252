using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Students;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.SeedDemo.Year;

/// <summary>Students come, change and go.</summary>
internal sealed class StudentHappenings(Scene scene)
{
    public Task Archive(StudentLife life, CancellationToken stop) => scene.Office.Must((ArchiveStudent archive) => archive.Now(life.Id, life.Coach, stop));

    public Task Restore(StudentLife life, CancellationToken stop) => scene.Office.Must((RestoreStudent restore) => restore.Now(life.Id, scene.Cast.Desk, stop));

    public async Task Erase(StudentLife life, CancellationToken stop)
    {
        await scene.Office.Must((EraseStudent erase) => erase.ForGood(life.Id, scene.Cast.Owner, stop));
        (life.Plan, life.Pass) = (null, null);
    }

    public Task LevelUp(StudentLife life, CancellationToken stop) => Change(life, d => d with { Level = d.Level == Level.Beginner ? Level.Improver : Level.Experienced }, stop);

    public Task FewerMinutes(StudentLife life, CancellationToken stop) => Change(life, d => d with { MinutesPerWeek = Math.Max(30, d.MinutesPerWeek / 2) }, stop);

    public Task NoteLimit(StudentLife life, LocalDate day, CancellationToken stop) => Change(
        life,
        d => d with { Limits = [.. d.Limits.Where(l => l.Region != Region.LeadKnee), new StudentLimit { Region = Region.LeadKnee, Status = LimitStatus.Current, NotedOn = day, Source = "student, by phone" }] },
        stop);

    public Task ClearLimit(StudentLife life, CancellationToken stop) => Change(
        life, d => d with { Limits = [.. d.Limits.Select(l => l.Status == LimitStatus.Current ? l with { Status = LimitStatus.Cleared, Source = "physiotherapist's note" } : l)] }, stop);

    // As a person would: open the page, change one thing, save all of it.
    private async Task Change(StudentLife life, Func<StudentDetails, StudentDetails> change, CancellationToken stop)
    {
        var now = await scene.Office.Read(db => db.Students.AsNoTracking().SingleAsync(s => s.Id == life.Id, stop));
        var details = change(Of(now));
        await scene.Office.Must((ChangeStudent save) => save.To(life.Id, now.Version, details, life.Coach, stop));
    }

    private static StudentDetails Of(Student s) => new()
    {
        GivenName = s.GivenName,
        FamilyName = s.FamilyName,
        Email = s.Email,
        Phone = s.Phone,
        BirthDate = s.BirthDate,
        Guardian = s.Guardian,
        Hand = s.Hand,
        Level = s.Level,
        Goals = s.Goals,
        Kit = s.Kit,
        Room = s.Room,
        MinutesPerWeek = s.MinutesPerWeek,
        DaysPerWeek = s.DaysPerWeek,
        Limits = s.Limits,
        ClubSpeedGoal = s.ClubSpeedGoalMetresPerSecond is { } goal ? new Quantity(goal, Unit.MetrePerSecond) : null,
        Height = s.HeightCm is { } height ? new Quantity(height, Unit.Centimetre) : null,
        Notes = s.Notes,
    };
}
