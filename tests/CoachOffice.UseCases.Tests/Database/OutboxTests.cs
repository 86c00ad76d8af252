using CoachOffice.Data;
using CoachOffice.Data.FollowUps;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Plans;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Database;

public abstract class OutboxTests(OfficeFixture fixture)
{
    private static readonly Duration Lease = Duration.FromMinutes(2);
    private int _count;

    [Fact]
    public async Task A_due_message_is_handed_to_one_holder_until_its_lease_ends()
    {
        var office = await fixture.Another(opened: true);
        var message = await Due(office, await ActivePlan(office));

        var first = await Claim(office, "one");
        var second = await Claim(office, "two");
        office.Time.Advance(TimeSpan.FromMinutes(3));
        var third = await Claim(office, "two");

        Assert.Equal(message, first.Single().Id);
        Assert.Empty(second);
        Assert.Equal((message, 2, "two"), (third.Single().Id, third.Single().Attempts, third.Single().ClaimedBy));
    }

    [Fact]
    public async Task Many_claims_at_once_never_give_a_message_twice()
    {
        var office = await fixture.Another(opened: true);
        var plan = await ActivePlan(office);
        for (var n = 0; n < 30; n++) await Due(office, plan);

        var claimed = await Task.WhenAll(Enumerable.Range(1, 6).Select(n => Task.Run(async () =>
        {
            var mine = new List<Guid>();
            for (var round = 0; round < 4; round++) mine.AddRange((await Claim(office, $"node {n}", most: 3)).Select(m => m.Id));
            return mine;
        })));

        var all = claimed.SelectMany(ids => ids).ToList();
        Assert.Equal(all.Count, all.Distinct().Count());
        Assert.Equal(30, all.Count + (await Claim(office, "last", most: 50)).Count);
    }

    [Fact]
    public async Task What_is_not_due_or_not_wanted_stays()
    {
        var office = await fixture.Another(opened: true);
        await Due(office, await ActivePlan(office), office.Now + Duration.FromMilliseconds(1));
        await Due(office, await ActivePlan(office, PlanStatus.OnHold));
        await Due(office, await ActivePlan(office, PlanStatus.Draft));
        await Due(office, await ActivePlan(office, archived: true));

        Assert.Empty(await Claim(office, "one"));
    }

    [Fact]
    public async Task A_student_who_stopped_messages_still_gets_the_plan_itself()
    {
        var office = await fixture.Another(opened: true);
        var plan = await ActivePlan(office);
        await office.Change(async db => (await db.Students.SingleAsync()).Stop(MessagePurpose.Encouragement, office.Now));
        foreach (var kind in (MessageKind[])[MessageKind.PracticeNudge, MessageKind.RetestPrompt]) await Due(office, plan, kind: kind);
        var delivery = await Due(office, plan, kind: MessageKind.PlanDelivery);

        Assert.Equal(delivery, (await Claim(office, "one")).Single().Id);
    }

    [Fact]
    public async Task Fewest_attempts_go_first_then_the_earliest()
    {
        var office = await fixture.Another(opened: true);
        var plan = await ActivePlan(office);
        var tried = await Due(office, plan, office.Now - Duration.FromHours(5));
        await Claim(office, "one");
        await office.Do((IOutbox box) => box.MarkFailed(new Sending(tried, "one", office.Now), "smtp-451", office.Now, default));
        var late = await Due(office, plan, office.Now - Duration.FromHours(1));
        var early = await Due(office, plan, office.Now - Duration.FromHours(2));

        Assert.Equal([early, late, tried], (await Claim(office, "one")).Select(m => m.Id));
    }

    [Fact]
    public async Task Sent_failed_for_good_and_given_back()
    {
        var office = await fixture.Another(opened: true);
        var plan = await ActivePlan(office);
        var (sent, failed, returned) = (await Due(office, plan), await Due(office, plan), await Due(office, plan));
        await Claim(office, "one");

        Assert.True(await office.Do((IOutbox box) => box.MarkBegun(Of(sent, office), default)));
        Assert.True(await office.Do((IOutbox box) => box.MarkSent(Of(sent, office), default)));
        Assert.True(await office.Do((IOutbox box) => box.MarkFailed(Of(failed, office), "smtp-550", null, default)));
        Assert.Equal(1, await office.Do((IOutbox box) => box.GiveBack([returned], "one", default)));

        var kept = await office.Read(db => db.Messages.ToDictionaryAsync(m => m.Id));
        Assert.Equal((MessageState.Sent, office.Now, null), (kept[sent].State, kept[sent].SentAt, kept[sent].ClaimedBy));
        Assert.Equal((MessageState.NeedsAttention, "smtp-550", null), (kept[failed].State, kept[failed].LastProblem, kept[failed].SendingAt));
        Assert.Equal((MessageState.Waiting, 0, null), (kept[returned].State, kept[returned].Attempts, kept[returned].LeaseUntil));
        Assert.Equal(returned, (await Claim(office, "two")).Single().Id);
    }

    [Fact]
    public async Task A_holder_whose_lease_went_to_another_is_told_so()
    {
        var office = await fixture.Another(opened: true);
        var message = await Due(office, await ActivePlan(office));
        await Claim(office, "one");
        office.Time.Advance(TimeSpan.FromMinutes(3));
        await Claim(office, "two");

        Assert.False(await office.Do((IOutbox box) => box.MarkSent(Of(message, office), default)));
        Assert.Equal(MessageState.Waiting, (await office.Read(db => db.Messages.SingleAsync())).State);
    }

    [Fact]
    public async Task What_a_dead_holder_left_comes_after_all_that_is_new_and_one_at_a_time()
    {
        var office = await fixture.Another(opened: true);
        var plan = await ActivePlan(office);
        for (var n = 0; n < 3; n++) await Due(office, plan, office.Now - Duration.FromHours(1));
        Assert.Equal(3, (await Claim(office, "died")).Count);
        office.Time.Advance(TimeSpan.FromMinutes(3));

        Assert.Equal([await Due(office, plan)], (await Claim(office, "two")).Select(m => m.Id));
        for (var n = 0; n < 3; n++) Assert.Equal(2, (await Claim(office, "two")).Single().Attempts);
        Assert.Empty(await Claim(office, "two"));
    }

    [Fact]
    public async Task A_lease_from_before_the_clock_was_set_back_holds_nothing_up()
    {
        var office = await fixture.Another(opened: true);
        var message = await Due(office, await ActivePlan(office), office.Now - Duration.FromHours(3));
        await office.Do((IOutbox box) => box.Claim(new ClaimOrder(office.Now + Duration.FromHours(1), Lease, "before", 5), default));

        Assert.Equal(message, (await Claim(office, "after")).Single().Id);
    }

    [Fact]
    public async Task A_lease_can_be_renewed_and_what_was_stopped_meanwhile_is_wanted_no_more()
    {
        var office = await fixture.Another(opened: true);
        var message = await Due(office, await ActivePlan(office));
        await Claim(office, "one");
        Assert.True(await office.Do((IOutbox box) => box.IsStillWanted(Of(message, office), default)));

        Assert.Equal(1, await office.Do((IOutbox box) => box.Renew("one", office.Now + Duration.FromMinutes(9), default)));
        office.Time.Advance(TimeSpan.FromMinutes(5));
        Assert.Empty(await Claim(office, "two"));
        await office.Change(async db => (await db.Students.SingleAsync()).Stop(MessagePurpose.Encouragement, office.Now));
        Assert.False(await office.Do((IOutbox box) => box.IsStillWanted(Of(message, office), default)));
        Assert.False(await office.Do((IOutbox box) => box.MarkBegun(Of(message, office), default)));
    }

    [Fact]
    public async Task The_same_cause_twice_is_one_message()
    {
        var office = await fixture.Another(opened: true);
        var plan = await ActivePlan(office);
        await Due(office, plan, occasion: "day 3");

        var fault = await Assert.ThrowsAsync<DbUpdateException>(() => Due(office, plan, occasion: "day 3"));

        Assert.True(DatabaseFaults.IsDuplicate(fault));
    }

    private static Sending Of(Guid message, TestOffice office) => new(message, "one", office.Now);

    private static Task<IReadOnlyList<Message>> Claim(TestOffice office, string owner, int most = 20) =>
        office.Do((IOutbox box) => box.Claim(new ClaimOrder(office.Now, Lease, owner, most), default));

    private static async Task<PlanId> ActivePlan(TestOffice office, PlanStatus status = PlanStatus.Active, bool archived = false)
    {
        var student = await office.Register(AStudent.Named("Mail", "Receiver"));
        if (archived) await office.Must((ArchiveStudent archive) => archive.Now(student, office.Owner));
        return await office.GivePlan(student, status);
    }

    private async Task<Guid> Due(TestOffice office, PlanId plan, Instant? at = null, MessageKind kind = MessageKind.PracticeNudge, string? occasion = null)
    {
        var (number, student) = (++_count, await office.Read(db => db.Plans.Where(p => p.Id == plan).Select(p => p.StudentId).SingleAsync()));
        var id = new SeededIds(number).Next();
        var due = new DueMessage { Kind = kind, StudentId = student, PlanId = plan, DueAt = at ?? office.Now, Reason = "test", Occasion = occasion ?? $"{number}" };
        await office.Change(db => Task.FromResult(db.Add(Message.Due(id, due, office.Now))));
        return id;
    }
}

public sealed class OutboxOnSqlite(SqliteOffice office) : OutboxTests(office), IClassFixture<SqliteOffice>;

public sealed class OutboxOnPostgreSql(PostgreSqlOffice office) : OutboxTests(office), IClassFixture<PostgreSqlOffice>;
