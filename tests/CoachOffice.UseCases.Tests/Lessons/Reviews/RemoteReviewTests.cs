using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Lessons.Reviews;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Insight;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Lessons.Reviews;
using CoachOffice.UseCases.Plans;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using Microsoft.EntityFrameworkCore;
using MimeKit;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Lessons.Reviews;

public abstract class RemoteReviewTests(OfficeFixture fixture)
{
    private static readonly OfferingId Offer = OfferingId.From(Guid.Parse("30000000-0000-0000-0000-000000000009"));

    [Fact]
    public async Task A_review_keeps_its_promise_by_when_it_came_and_stands_in_the_queue()
    {
        var office = await Ready();
        var early = await Send(office, await office.Register(AStudent.Named("Early", "Bird")), 1);
        office.Time.Advance(TimeSpan.FromHours(1));
        await Send(office, await office.Register(AStudent.Named("Late", "Riser")), 2, "Australia/Sydney");

        var waiting = await office.Do((ReviewQueue queue) => queue.Waiting(10));
        Assert.Equal(["Early Bird", "Late Riser"], waiting.Select(r => r.StudentName));
        Assert.Equal((early, Duration.FromHours(48), 1, ReviewStatus.Received), (waiting[0].Id, waiting[0].PromisedBy - waiting[0].SubmittedAt, waiting[0].Clips, waiting[0].Status));
        Assert.Equal("Australia/Sydney", await office.Read(db => db.RemoteReviews.Where(r => r.Id == waiting[1].Id).Select(r => r.Zone).SingleAsync()));
        Assert.Equal(2, (await office.Do((TodayDiary today) => today.For(office.Coach))).Reviews.Count);
    }

    [Fact]
    public async Task Sent_twice_it_is_one_review()
    {
        var office = await Ready();
        var student = await office.Register(AStudent.Named("Double", "Post"));
        var form = Form(1);
        Assert.Equal(await Submit(office, form, student), await Submit(office, form, student));
        Assert.Equal((1, 1), (await office.Read(db => db.RemoteReviews.CountAsync()), await office.Read(db => db.ReviewClips.CountAsync())));
    }

    [Fact]
    public async Task Opening_it_makes_one_lesson_with_the_clips_and_the_approved_plan_answers_it()
    {
        var office = await Ready();
        var student = await office.Register(AStudent.Named("Far", "Away"));
        var review = await Send(office, student, 3);

        var lesson = await office.Must((OpenReview open) => open.For(review, office.Coach));
        Assert.Equal(lesson, await office.Must((OpenReview open) => open.For(review, office.Owner)));
        var beside = (await office.Do((FindReview find) => find.Of(lesson)))!;
        Assert.Equal((3, "thin to the right", 0), (beside.Clips.Count, beside.Review.BallFlight, await office.Read(db => db.ReviewClips.CountAsync())));
        await office.Must((SaveLesson save) => save.As(lesson, 1, new LessonForm { Heading = new(new LocalDate(2026, 3, 2), Club.Driver), Entries = [Scene.Entry(Scene.HeadShift, "12 13 11"), Scene.Entry("impact-spine-tilt", "12"), Scene.Entry("address-spine-tilt", "6")] }, office.Coach));
        var plan = await office.Must((DraftPlan draft) => draft.For(lesson, office.Coach));
        Assert.Single(await office.Do((ReviewQueue queue) => queue.Waiting(10)));

        await office.Must((ApprovePlan approve) => approve.Now(plan, 1, office.Coach));
        Assert.Empty(await office.Do((ReviewQueue queue) => queue.Waiting(10)));
        Assert.Equal(ReviewStatus.Answered, (await office.Do((ReviewQueue queue) => queue.Ended(10))).Single().Status);
        Assert.Equal(3000, await office.Read(db => db.LedgerPostings.Where(p => p.Account == LedgerAccount.Receivable).SumAsync(p => p.AmountMinor)));
        Assert.Equal(PlanStatus.Active, await office.Read(db => db.Plans.Where(p => p.Id == plan).Select(p => p.Status).SingleAsync()));
    }

    [Fact]
    public async Task The_promise_is_told_in_the_students_zone_and_the_coach_is_reminded_a_day_before()
    {
        var office = await Ready();
        var review = await Send(office, await office.Register(AStudent.Named("Down", "Under")), 1, "Australia/Sydney");

        await office.Do((SweepMessages sweep) => sweep.Once(CancellationToken.None));
        var told = Assert.Single(await Letters(office));
        Assert.Equal("Down Under", told.To.Mailboxes.Single().Name);
        Assert.Contains("promised by Wednesday 4 March, 20:00 (Australia/Sydney time)", told.TextBody, StringComparison.Ordinal);

        office.Time.Advance(TimeSpan.FromHours(25));
        await office.Do((SweepMessages sweep) => sweep.Once(CancellationToken.None));
        var reminder = (await Letters(office)).Single(l => l.MessageId != told.MessageId);
        Assert.Equal("carl@harbour-road.example", reminder.To.Mailboxes.Single().Address, ignoreCase: true);
        Assert.Contains("promised by Wednesday 4 March, 09:00 (Europe/London time)", reminder.TextBody, StringComparison.Ordinal);
        Assert.Equal(ReviewStatus.Received, await office.Read(db => db.RemoteReviews.Where(r => r.Id == review).Select(r => r.Status).SingleAsync()));
    }

    [Fact]
    public async Task An_answered_review_reminds_nobody()
    {
        var office = await Ready();
        var review = await Send(office, await office.Register(AStudent.Named("Quick", "Answer")), 1);
        await office.Do((SweepMessages sweep) => sweep.Once(CancellationToken.None));
        await office.Must((EndReview end) => end.AsAnswered(review, office.Coach));

        office.Time.Advance(TimeSpan.FromHours(47));
        await office.Do((SweepMessages sweep) => sweep.Once(CancellationToken.None));
        Assert.Single(await Letters(office));
    }

    [Fact]
    public async Task A_minor_without_a_guardians_consent_sends_no_clips()
    {
        var office = await Ready();
        var student = await office.Register(AStudent.Junior("Nia", "Young"));

        var refusals = await office.Refuses((SubmitReview submit) => submit.From(Form(1), new VisitPass(student, Guid.Empty)));
        Assert.Equal("media-consent-missing", refusals.Single().Code);
        Assert.False(Directory.Exists(Path.Combine(office.Folder, "media")) && Directory.EnumerateFiles(Path.Combine(office.Folder, "media"), "*", SearchOption.AllDirectories).Any());
    }

    [Theory]
    [InlineData("no-clips", "review-clips")]
    [InlineData("a-picture", "clip-format")]
    [InlineData("long-words", "review-text")]
    [InlineData("other-offering", "review-offering")]
    public async Task What_cannot_be_taken_is_refused_and_nothing_is_kept(string circumstance, string code)
    {
        var office = await Ready();
        var student = await office.Register(AStudent.Named("Not", "Taken"));
        var form = circumstance switch
        {
            "no-clips" => Form(0),
            "a-picture" => Form(1) with { Clips = [() => new MemoryStream([0xFF, 0xD8, 0xFF, 0xE0, 0, 16, .. "JFIF\0"u8, .. new byte[40]])] },
            "long-words" => Form(1) with { Words = new ReviewWords { Club = Club.Driver, Felt = new string('a', 2001) } },
            _ => Form(1) with { OfferingId = OfferingId.From(Guid.Parse("30000000-0000-0000-0000-000000000008")) },
        };
        Assert.Equal(code, (await office.Refuses((SubmitReview submit) => submit.From(form, new VisitPass(student, Guid.Empty)))).Single().Code);
        Assert.Equal(0, await office.Read(db => db.RemoteReviews.CountAsync()));
    }

    [Fact]
    public async Task Taken_out_of_the_queue_its_clips_are_gone()
    {
        var office = await Ready();
        var review = await Send(office, await office.Register(AStudent.Named("Second", "Thoughts")), 2);
        Assert.Equal(2, Files(office));

        await office.Must((EndReview end) => end.AsWithdrawn(review, office.Coach));
        Assert.Equal(0, Files(office));
        Assert.Equal("review-over", (await office.Refuses((EndReview end) => end.AsAnswered(review, office.Coach))).Single().Code);
        Assert.Equal("review-over", (await office.Refuses((OpenReview open) => open.For(review, office.Coach))).Single().Code);
        Assert.Equal(NotAllowed.Code, (await office.Refuses((OpenReview open) => open.For(review, office.Desk))).Single().Code);
    }

    [Fact]
    public async Task Erasing_the_student_takes_words_and_clips_along()
    {
        var office = await Ready();
        var student = await office.Register(AStudent.Named("Gone", "Forgood"));
        await Send(office, student, 1);

        await office.Must((EraseStudent erase) => erase.ForGood(student, office.Owner));

        var kept = await office.Read(db => db.RemoteReviews.Include(r => r.Clips).AsNoTracking().SingleAsync());
        Assert.Equal(("", "", "", 0, ReviewStatus.Withdrawn, 0), (kept.BallFlight, kept.Felt, kept.Numbers, kept.Clips.Count, kept.Status, Files(office)));
    }

    private static async Task<IReadOnlyList<MimeMessage>> Letters(TestOffice office)
    {
        var letters = new List<MimeMessage>();
        foreach (var path in Directory.EnumerateFiles(Path.Combine(office.Folder, "mail"), "*.eml")) letters.Add(await MimeMessage.LoadAsync(path));
        return letters;
    }

    private static int Files(TestOffice office) => Directory.EnumerateFiles(Path.Combine(office.Folder, "media"), "*", SearchOption.AllDirectories).Count();

    private static ReviewForm Form(int clips) => new()
    {
        Id = ReviewId.From(Guid.Parse("70000000-0000-0000-0000-000000000001")),
        OfferingId = Offer,
        Words = new ReviewWords { Club = Club.Driver, BallFlight = " thin to the right ", Felt = "rushed", Numbers = "carry 180 m" },
        Clips = [.. Enumerable.Range(0, clips).Select<int, Func<Stream>>(n => () => new MemoryStream([0, 0, 0, 24, .. "ftypisom"u8, 0, 0, 2, 0, .. "isommp41"u8, (byte)n, .. new byte[200]]))],
    };

    private static Task<ReviewId> Submit(TestOffice office, ReviewForm form, StudentId student) => office.Must((SubmitReview submit) => submit.From(form, new VisitPass(student, Guid.Empty)));

    private static Task<ReviewId> Send(TestOffice office, StudentId student, int clips, string zone = "") => Submit(office, Form(clips) with { Id = ReviewId.From(student.Value), Zone = zone }, student);

    private async Task<TestOffice> Ready()
    {
        var office = await fixture.Another(opened: true);
        await office.Change(db =>
        {
            db.Add(Offering.Of(Offer, new OfferingDetails { Name = "Clips answered", Kind = OfferingKind.RemoteReview, PriceMinor = 3000, TurnaroundHours = 48, Coaches = [office.Coach.Account!.Value] }, office.Now));
            return Task.CompletedTask;
        });
        return office;
    }
}

public sealed class RemoteReviewOnSqlite(SqliteOffice office) : RemoteReviewTests(office), IClassFixture<SqliteOffice>;

public sealed class RemoteReviewOnPostgreSql(PostgreSqlOffice office) : RemoteReviewTests(office), IClassFixture<PostgreSqlOffice>;
