using CoachOffice.Data.Media;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Media;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Media;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Media;

public abstract class StillsTests(OfficeFixture fixture)
{
    private static readonly LocalDate Day = new(2026, 3, 2);
    private static readonly StillShows Shows = new(View.FaceOn, Moment.Top, 1);

    [Fact]
    public async Task A_still_lies_under_the_hash_of_its_bytes_and_comes_back_as_it_lies()
    {
        var office = fixture.Office;
        var lesson = await ALesson(office);

        var still = await Add(office, lesson, 640, 480);

        var view = (await office.Do((StillsPage page) => page.Of(lesson)))!;
        var item = view.Stills.Single();
        Assert.Equal((still, 640, 480, MediaKind.Still, MediaFormat.Jpeg), (item.Id, item.Width, item.Height, item.Kind, item.Format));
        Assert.True(view.Used >= item.Bytes);
        var bytes = await Bytes(office, still, small: false);
        Assert.Equal(item.Sha256, Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(bytes)));
        Assert.Equal(bytes, await File.ReadAllBytesAsync(PathOf(office, item.Sha256)));
        Assert.NotEqual(bytes, await Bytes(office, still, small: true));
        Assert.Equal("still-added", (await office.Read(db => db.AuditEntries.SingleAsync(a => a.SubjectId == still.Value))).Action);
    }

    [Fact]
    public async Task The_same_picture_twice_is_one_still_of_a_lesson_and_one_file_of_two_lessons()
    {
        var office = fixture.Office;
        var (one, other) = (await ALesson(office), await ALesson(office));
        var first = await Add(office, one, 300, 301);

        Assert.Equal(first, await Add(office, one, 300, 301));
        var second = await Add(office, other, 300, 301);
        Assert.NotEqual(first, second);

        await office.Must((RemoveMedia remove) => remove.ForGood(first, office.Coach));
        Assert.NotEmpty(await Bytes(office, second, small: false));
        var item = (await office.Do((StillsPage page) => page.Of(other)))!.Stills.Single();
        await office.Must((RemoveMedia remove) => remove.ForGood(second, office.Coach));
        Assert.False(File.Exists(PathOf(office, item.Sha256)) || File.Exists(PathOf(office, item.SmallSha256)));
        Assert.Equal("media-not-found", (await office.Refuses((OpenMedia open) => open.Of(second, false, office.Coach))).Single().Code);
    }

    [Fact]
    public async Task The_desk_neither_adds_nor_sees_nor_removes()
    {
        var office = fixture.Office;
        var lesson = await ALesson(office);
        var still = await Add(office, lesson, 310, 200);

        Assert.Equal(NotAllowed.Code, (await office.Refuses((OpenMedia open) => open.Of(still, true, office.Desk))).Single().Code);
        Assert.Equal(NotAllowed.Code, (await office.Refuses((RemoveMedia remove) => remove.ForGood(still, office.Desk))).Single().Code);
        Assert.Equal(NotAllowed.Code, (await office.Refuses((AddStill add) => add.To(lesson, Shows, Picture(311, 200), office.Desk))).Single().Code);
    }

    [Fact]
    public async Task Over_the_quota_or_the_size_of_one_nothing_is_kept_and_the_sentence_says_how_much_there_is()
    {
        var office = await fixture.Another(opened: true, services => services.AddSingleton(new MediaSettings { QuotaMegabytes = 0, LargestStillMegabytes = 1 }));
        var lesson = await ALesson(office);

        var quota = (await office.Refuses((AddStill add) => add.To(lesson, Shows, Picture(320, 200), office.Coach))).Single();
        var size = (await office.Refuses((AddStill add) => add.To(lesson, Shows, new MemoryStream(new byte[1_000_001]), office.Coach))).Single();

        Assert.Equal(("media-quota", "still-too-large"), (quota.Code, size.Code));
        Assert.Contains("at most 0 kB", quota.Sentence, StringComparison.Ordinal);
        Assert.Empty(FilesOf(office));
        Assert.Equal(0, await office.Read(db => db.MediaItems.CountAsync()));
    }

    [Fact]
    public async Task Of_a_minor_nothing_is_kept_before_the_guardian_consented_nor_shown_after_it_was_withdrawn()
    {
        var office = fixture.Office;
        var student = await office.Register(AStudent.Junior("Nuno", "Barros"));
        var lesson = await Scene.LessonOf(office, student, Day);
        var refused = (await office.Refuses((AddStill add) => add.To(lesson, Shows, Picture(330, 200), office.Coach))).Single();
        Assert.Equal("media-consent-missing", refused.Code);
        Assert.Contains("Mara Barros", refused.Sentence, StringComparison.Ordinal);

        await office.Must((GiveMediaConsent give) => give.For(student, new ConsentForm("Mara Barros", Day), office.Desk));
        var still = await Add(office, lesson, 330, 200);
        Assert.NotEmpty(await Bytes(office, still, small: true));

        await office.Must((WithdrawMediaConsent withdraw) => withdraw.Of(student, office.Coach));
        Assert.Equal("media-consent-withdrawn", (await office.Refuses((OpenMedia open) => open.Of(still, true, office.Owner))).Single().Code);
        Assert.Equal("media-consent-withdrawn", (await office.Refuses((AddStill add) => add.To(lesson, Shows, Picture(331, 200), office.Coach))).Single().Code);
        var page = (await office.Do((ConsentPage consent) => consent.Of(student)))!;
        Assert.Equal((MediaPermission.Withdrawn, 1, 1), (page.Permission, page.Consents.Count, page.Lessons.Single().Count));
        Assert.Equal((office.Desk.Name, office.Coach.Name), (page.Consents[0].RecordedBy, page.Consents[0].WithdrawnBy));

        Assert.Equal(1, await office.Must((RemoveMediaOf remove) => remove.ForGood(student, office.Coach)));
        Assert.Empty((await office.Do((ConsentPage consent) => consent.Of(student)))!.Lessons);
    }

    [Fact]
    public async Task Erasing_a_student_takes_their_stills_from_the_disk_too()
    {
        var office = await fixture.Another(opened: true);
        var student = await office.Register(AStudent.Named("Erik", "Vass"));
        var still = await Add(office, await Scene.LessonOf(office, student, Day), 340, 200);
        await office.Must((GiveMediaConsent give) => give.For(student, new ConsentForm("Erik Vass", Day), office.Coach));
        Assert.Equal(2, FilesOf(office).Count);

        await office.Must((EraseStudent erase) => erase.ForGood(student, office.Owner));

        Assert.Empty(FilesOf(office));
        Assert.Equal((0, 0), (await office.Read(db => db.MediaItems.CountAsync(m => m.Id == still)), await office.Read(db => db.MediaConsents.CountAsync(c => c.StudentId == student))));
    }

    [Fact]
    public async Task What_a_crash_left_is_swept_after_a_day_and_nothing_else()
    {
        var office = await fixture.Another(opened: true);
        var still = await Add(office, await ALesson(office), 350, 200);
        var folder = office.Services.GetRequiredService<MediaFolder>();
        var orphan = folder.Keep((await folder.Receive(new MemoryStream("left behind"u8.ToArray()), 100, default))!, MediaFormat.Jpeg);
        var arrival = await folder.Receive(new MemoryStream("half of it"u8.ToArray()), 100, default);
        Age(office, TimeSpan.FromHours(23));
        Assert.Equal(0, await office.Do((SweepMedia sweep) => sweep.Once(default)));

        Age(office, TimeSpan.FromHours(25));
        Assert.Equal(2, await office.Do((SweepMedia sweep) => sweep.Once(default)));

        Assert.Null(folder.Open(orphan.Sha256));
        Assert.NotEmpty(await Bytes(office, still, small: false));
        Assert.Equal(2, FilesOf(office).Count);
        arrival!.Dispose();
    }

    [Fact]
    public async Task More_bytes_than_allowed_leave_nothing_behind()
    {
        var office = await fixture.Another(opened: true);
        var folder = office.Services.GetRequiredService<MediaFolder>();

        Assert.Null(await folder.Receive(new MemoryStream(new byte[101]), 100, default));

        Assert.Empty(FilesOf(office));
    }

    private static async Task<LessonId> ALesson(TestOffice office) => await Scene.LessonOf(office, await office.Register(AStudent.Named("Still", "Stander")), Day);

    private static Task<MediaId> Add(TestOffice office, LessonId lesson, int width, int height) => office.Must((AddStill add) => add.To(lesson, Shows, Picture(width, height), office.Coach));

    private static MemoryStream Picture(int width, int height) => new(APicture.RedAndBlue(width, height));

    private static async Task<byte[]> Bytes(TestOffice office, MediaId still, bool small)
    {
        var opened = await office.Must((OpenMedia open) => open.Of(still, small, office.Coach));
        await using var bytes = opened.Bytes;
        using var held = new MemoryStream();
        await bytes.CopyToAsync(held);
        return held.ToArray();
    }

    private static string PathOf(TestOffice office, string hash) => Path.Combine(office.Folder, "media", hash[..2], hash);

    private static List<string> FilesOf(TestOffice office) => Directory.Exists(Path.Combine(office.Folder, "media")) ? [.. Directory.EnumerateFiles(Path.Combine(office.Folder, "media"), "*", SearchOption.AllDirectories)] : [];

    private static void Age(TestOffice office, TimeSpan age)
    {
        foreach (var file in FilesOf(office)) File.SetLastWriteTimeUtc(file, (office.Time.GetUtcNow() - age).UtcDateTime);
    }
}

public sealed class StillsOnPostgreSql(PostgreSqlOffice office) : StillsTests(office), IClassFixture<PostgreSqlOffice>;

public sealed class StillsOnSqlite(SqliteOffice office) : StillsTests(office), IClassFixture<SqliteOffice>;
