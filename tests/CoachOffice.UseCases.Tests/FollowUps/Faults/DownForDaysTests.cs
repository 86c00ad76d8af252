using CoachOffice.Domain.FollowUps;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Tests.Bookings.Mail;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.FollowUps.Faults;

/// <summary>The program was off for three days.</summary>
public abstract class DownForDaysTests(OfficeFixture fixture)
{
    [Fact]
    public async Task What_speaks_of_lessons_that_are_over_stays_and_all_else_goes_once()
    {
        var office = await fixture.Another(opened: true);
        var (booked, student) = (await BookedLessons.Of(office), await office.Register(AStudent.Named("Alma", "Reed")));
        await booked.Book(new LocalDateTime(2026, 3, 4, 10, 0), student);
        await booked.Book(new LocalDateTime(2026, 3, 10, 10, 0), student);
        var scene = await Scene.Approved(office);
        scene.At(3, 5, 10);

        var swept = await scene.Sweep();
        Assert.Equal((2, 2), (swept.Sent, swept.Skipped));
        Assert.Equal(0, (await scene.Sweep()).Sent);

        var messages = await office.Read(db => db.Messages.AsNoTracking().ToListAsync());
        Assert.Equal([MessageState.Sent, MessageState.Skipped], messages.Where(m => m.Kind == MessageKind.BookingInvitation).Select(m => m.State).Order());
        Assert.Equal([MessageState.Waiting, MessageState.Skipped], messages.Where(m => m.Kind == MessageKind.LessonReminder).Select(m => m.State).Order());
        Assert.Equal(MessageState.Sent, messages.Single(m => m.Kind == MessageKind.PlanDelivery).State);
        Assert.Equal(2, Directory.GetFiles(Path.Combine(office.Folder, "mail"), "*.eml").Length);
    }
}

public sealed class DownForDaysOnSqlite(SqliteOffice office) : DownForDaysTests(office), IClassFixture<SqliteOffice>;

public sealed class DownForDaysOnPostgreSql(PostgreSqlOffice office) : DownForDaysTests(office), IClassFixture<PostgreSqlOffice>;
