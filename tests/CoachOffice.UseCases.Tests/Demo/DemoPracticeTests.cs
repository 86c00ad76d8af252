using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Insight;
using CoachOffice.UseCases.Measuring.Again;
using CoachOffice.UseCases.Measuring.Sure;
using CoachOffice.UseCases.Plans;
using CoachOffice.UseCases.Students;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Demo;

/// <summary>What the demo practice has to show: something of everything the office does.</summary>
[Collection(DemoCollection.Name)]
public sealed class DemoPracticeTests(DemoOffice office)
{
    [Fact]
    public async Task Takes_were_read_twice_often_enough_to_know_the_practices_own_error_and_some_wait()
    {
        var sure = await office.Demo.Do((ReadHowSure read) => read.Now());
        var tilt = sure.Single(s => s.Measure.Id.Value == "impact-spine-tilt").Twice.Single(t => t.Instrument == Instrument.Video);

        Assert.True(tilt.Pairs >= 10, $"{tilt.Pairs} pairs");
        Assert.InRange(tilt.BySameReader, 1, tilt.Pairs - 1);
        Assert.InRange(tilt.Error, .5, 2);
        Assert.NotNull(tilt.Correlation);
        Assert.NotEmpty(await office.Demo.Do((ListSecondReadings list) => list.Waiting()));
    }

    [Fact]
    public async Task About_forty_students_of_every_kind_have_two_to_nine_lessons()
    {
        var (students, counts) = await office.Demo.Read(async db => (
            await db.Students.AsNoTracking().ToListAsync(),
            await db.Lessons.Where(l => l.Kind == Domain.Lessons.LessonKind.Lesson).GroupBy(l => l.StudentId).Select(g => g.Count()).ToListAsync()));

        Assert.InRange(students.Count, 36, 50);
        Assert.Equal(students.Count, counts.Count);
        Assert.All(counts, c => Assert.InRange(c, 2, 9));
        var today = office.Demo.Now.InUtc().Date;
        Assert.True(students.Count(s => s.BirthDate is { } born && Ages.IsMinor(born, today)) >= 4);
        Assert.All(students.Where(s => s.BirthDate is { } born && Ages.IsMinor(born, today)), s => Assert.NotNull(s.Guardian));
        Assert.True(students.Count(s => s.Hand == Hand.Left) >= 3);
        Assert.Equal(Enum.GetValues<Level>().Length, students.Select(s => s.Level).Distinct().Count());
        Assert.Equal(Enum.GetValues<Room>().Length, students.Select(s => s.Room).Distinct().Count());
        Assert.Equal(Enum.GetValues<LimitStatus>().Length, students.SelectMany(s => s.Limits).Select(l => l.Status).Distinct().Count());
        Assert.Contains(students, s => s.ArchivedAt is not null && s.ErasedAt is null);
        Assert.Contains(students, s => s.ErasedAt is not null);
    }

    [Fact]
    public async Task Plans_are_in_every_state_and_run_in_every_stage()
    {
        var plans = await office.Demo.Read(db => db.Plans.AsNoTracking().Include(p => p.Stages).ToListAsync());

        Assert.Equal(Enum.GetValues<PlanStatus>().Order(), plans.Select(p => p.Status).Distinct().Order());
        Assert.Contains(plans, p => p is { Status: PlanStatus.OnHold, HoldReason: AfterCheckIn.PainReport });
        var running = plans.Where(p => p.Status == PlanStatus.Active).SelectMany(p => p.Stages).Where(s => s.Status == StageStatus.Current).Select(s => s.Stage);
        Assert.Equal(Enum.GetValues<Stage>(), running.Distinct().Order());
        Assert.True(await office.Demo.Read(db => db.PlanEdits.Select(e => e.Reason).Distinct().CountAsync()) >= 3);
    }

    [Fact]
    public async Task Retests_moved_did_not_and_cannot_tell()
    {
        var looks = await office.Demo.Read(db => db.Retests.AsNoTracking().ToListAsync());

        var movements = looks.Where(l => l.Verdict is not null).Select(l => l.Verdict!.Movement).ToList();
        Assert.Equal(Enum.GetValues<Movement>(), movements.Distinct().Order());
        Assert.Contains(looks, l => l is { IsSecondLook: true, Verdict: not null });
        var today = office.Demo.Now.InUtc().Date;
        Assert.Contains(looks, l => l.Status == RetestStatus.Ready && !l.IsSecondLook && l.DueOn < today);
        Assert.Contains(looks, l => l.Status == RetestStatus.Ready && l.IsSecondLook && l.DueOn <= today);
    }

    [Fact]
    public async Task Messages_wait_went_out_were_left_out_and_need_a_person()
    {
        var states = await office.Demo.Read(db => db.Messages.Select(m => m.State).Distinct().ToListAsync());
        var kinds = await office.Demo.Read(db => db.Messages.Where(m => m.State == MessageState.Sent).Select(m => m.Kind).Distinct().ToListAsync());

        Assert.Equal(Enum.GetValues<MessageState>(), states.Order());
        Assert.Superset(new HashSet<MessageKind> { MessageKind.PlanDelivery, MessageKind.PracticeNudge, MessageKind.RetestPrompt, MessageKind.SecondLook, MessageKind.BookingInvitation, MessageKind.BookingCancelled }, kinds.ToHashSet());
        Assert.False(Directory.Exists(Path.Combine(office.Demo.Folder, "mail")), "Opening the demo writes no mail.");
    }

    [Fact]
    public async Task Today_has_something_of_each()
    {
        var today = await office.Demo.Do((TodayPage page) => page.For(office.DemoOwner));

        Assert.Contains(today.Safety, s => s.Emergency);
        Assert.Contains(today.Safety, s => !s.Emergency);
        Assert.True(today.Lessons.Count >= 3);
        Assert.Contains(today.Lessons, l => l.HasPlan);
        Assert.Contains(today.Lessons, l => !l.HasPlan);
        Assert.True(today.Drafts.Count >= 3);
        Assert.NotEmpty(today.Retests);
        Assert.NotEmpty(today.Messages);
        Assert.NotEmpty(today.Silent);
    }

    [Fact]
    public async Task Every_draft_has_findings_and_what_it_begins_with_varies()
    {
        var stored = await office.Demo.Read(db => db.StoredDrafts.AsNoTracking().Where(d => d.Json != "").Select(d => d.Json).ToListAsync());
        var drafts = stored.ConvertAll(DraftJson.Read);

        Assert.All(drafts, d => Assert.NotEmpty(d.Findings));
        Assert.True(drafts.Count(d => d.Focus.Count > 0) >= drafts.Count * 3 / 4, "Most drafts ask for work.");
        Assert.True(drafts.SelectMany(d => d.Focus).Select(f => f.Fault).Distinct().Count() >= 12);
    }

    [Fact]
    public async Task Nobody_in_it_can_be_written_to_or_signs_in()
    {
        var mails = await office.Demo.Read(db => db.Students.AsNoTracking().Select(s => new { s.Email, s.Guardian }).ToListAsync());
        var accounts = await office.Demo.Read(db => db.Users.AsNoTracking().ToListAsync());

        Assert.All(mails.SelectMany(m => new[] { m.Email, m.Guardian?.Email ?? "" }).Where(m => m.Length > 0), m => Assert.EndsWith(".example", m, StringComparison.Ordinal));
        Assert.All(accounts, a => Assert.EndsWith(".example", a.Email, StringComparison.Ordinal));
        Assert.Equal(4, accounts.Count);
        Assert.True((await office.Demo.Read(db => db.Practices.SingleAsync())).IsDemo);
        Assert.Equal(0, await office.Demo.Read(db => db.PrivateLinks.CountAsync()));
    }

    [Fact]
    public async Task Its_pages_open()
    {
        var plans = await office.Demo.Read(db => db.Plans.Where(p => db.StoredDrafts.Any(d => d.Id == p.DraftId && d.Json != "")).Select(p => new { p.Id, p.StudentId }).ToListAsync());
        foreach (var plan in plans)
        {
            Assert.NotNull(await office.Demo.Do((DraftPage page) => page.Of(plan.Id)));
            Assert.NotNull(await office.Demo.Do((PlanPage page) => page.Of(plan.Id)));
        }

        foreach (var student in plans.Select(p => p.StudentId).Distinct())
            Assert.NotNull(await office.Demo.Do((StudentPage page) => page.Of(student)));
    }
}
