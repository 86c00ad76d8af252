using CoachOffice.Domain.FollowUps;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.Regressions;

/// <summary>Where mail leaves by a server there is no folder of letters; erasing a student who had one sent used to end in an exception after the deed was done.</summary>
public sealed class ErasingWithoutMailFolderTests(SqliteOffice fixture) : IClassFixture<SqliteOffice>
{
    [Fact]
    public async Task A_student_with_messages_is_erased_where_no_folder_was_ever_made()
    {
        var office = fixture.Office;
        var student = await office.Register(AStudent.Named("Otho", "Lindqvist"));
        var plan = await office.GivePlan(student);
        var due = new DueMessage { Kind = MessageKind.PlanDelivery, StudentId = student, PlanId = plan, DueAt = office.Now, Reason = "test", Occasion = "approval" };
        await office.Change(db =>
        {
            db.Messages.Add(Message.Due(new SeededIds(3).Next(), due, office.Now));
            return Task.CompletedTask;
        });
        Assert.False(Directory.Exists(Path.Combine(office.Folder, "mail")));

        await office.Must((EraseStudent erase) => erase.ForGood(student, office.Owner));

        Assert.NotNull(await office.Read(db => db.Students.Where(s => s.Id == student).Select(s => s.ErasedAt).SingleAsync()));
    }
}
