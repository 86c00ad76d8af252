using System.Text;
using CoachOffice.Domain.FollowUps;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.FollowUps.Bounces;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.UseCases.Tests.FollowUps.Bounces;

/// <summary>Mail that came back, from the file it lies in to the coach who corrects the address.</summary>
public abstract class BouncesTests(OfficeFixture fixture)
{
    private const string Gone = "Reporting-MTA: dns; mx.example\n\nFinal-Recipient: rfc822; ida.marsh@example.org\nAction: failed\nStatus: 5.1.1";
    private const string Full = "Reporting-MTA: dns; mx.example\n\nFinal-Recipient: rfc822; ida.marsh@example.org\nAction: delayed\nStatus: 4.2.2";
    private readonly string _folder = Directory.CreateTempSubdirectory("bounces").FullName;

    private string Mbox => Path.Combine(_folder, "inbox.mbox");

    [Fact]
    public async Task Mail_that_came_back_for_good_stops_the_address_until_it_is_corrected()
    {
        var scene = await Sent();
        await File.WriteAllBytesAsync(Path.Combine(_folder, "1.eml"), Notice(scene, Gone));
        Assert.Equal(1, await Read(scene));

        Assert.Equal((MessageState.NeedsAttention, "address-bounced"), await Delivery(scene));
        Assert.Empty(Directory.GetFiles(_folder));
        var delivery = (await scene.Messages()).Single(m => m.Kind == MessageKind.PlanDelivery).Id;
        scene.At(3, 6);
        Assert.Equal(0, (await scene.Sweep()).Sent);
        Assert.Equal("address-bounced", (await scene.Messages()).Single(m => m.Kind == MessageKind.PracticeNudge).LastProblem);
        Assert.Single((await scene.Office.Do((ReadReach read) => read.Of(scene.Student)))!.Bounces);

        await scene.Office.Must((ChangeStudent change) => change.To(scene.Student, 1, Scene.Adult with { Email = "ida@example.net" }, scene.Office.Coach));
        await scene.Office.Must((SendMessageNow send) => send.Now(delivery, scene.Office.Coach));
        Assert.Equal(1, (await scene.Sweep()).Sent);
        Assert.Empty((await scene.Office.Do((ReadReach read) => read.Of(scene.Student)))!.Bounces);
    }

    [Fact]
    public async Task A_person_may_know_that_the_address_is_right()
    {
        var scene = await Sent();
        await File.WriteAllBytesAsync(Path.Combine(_folder, "1.eml"), Notice(scene, Gone));
        await Read(scene);

        Assert.Equal(1, await scene.Office.Must((ForgetBounces forget) => forget.Of(scene.Student, scene.Office.Desk)));

        scene.At(3, 6);
        Assert.Equal(1, (await scene.Sweep()).Sent);
    }

    [Fact]
    public async Task A_delay_only_counts()
    {
        var scene = await Sent();
        await File.WriteAllBytesAsync(Path.Combine(_folder, "1.eml"), Notice(scene, Full));
        await Read(scene);

        Assert.Equal(MessageState.Sent, (await Delivery(scene)).State);
        Assert.Equal("4.2.2", Assert.Single((await scene.Office.Do((ReadReach read) => read.Of(scene.Student)))!.Bounces).Status);
        scene.At(3, 6);
        Assert.Equal(1, (await scene.Sweep()).Sent);
    }

    [Fact]
    public async Task Unknown_forged_repeated_and_broken_notices_change_nothing_and_the_rest_is_read()
    {
        var scene = await Sent();
        await File.WriteAllBytesAsync(Path.Combine(_folder, "0.eml"), [0, 255, 3, 10, 10, 7]);
        await File.WriteAllTextAsync(Path.Combine(_folder, "1.eml"), "");
        await File.WriteAllBytesAsync(Path.Combine(_folder, "2.eml"), BounceReaderTests.Notice(Gone, "To: ida.marsh@example.org", "message/rfc822", $"plan-delivery.{Guid.Empty:N}@localhost"));
        await File.WriteAllBytesAsync(Path.Combine(_folder, "3.eml"), BounceReaderTests.Notice(Gone, "To: ida.marsh@example.org", "message/rfc822", (await Id(scene)).Replace("plan-delivery", "receipt", StringComparison.Ordinal)));
        await File.WriteAllBytesAsync(Path.Combine(_folder, "4.eml"), BounceReaderTests.Notice(Gone, "To: ida.marsh@example.org", "message/rfc822", (await Id(scene)).Replace("@localhost", "@elsewhere.example", StringComparison.Ordinal)));
        Assert.Equal(0, await Read(scene));

        await File.WriteAllBytesAsync(Path.Combine(_folder, "5.eml"), Notice(scene, Gone));
        await File.WriteAllBytesAsync(Path.Combine(_folder, "6.eml"), Notice(scene, Gone));
        Assert.Equal(1, await Read(scene));
        Assert.Equal(1, await scene.Office.Read(db => db.MailBounces.CountAsync()));
        Assert.Equal(7, Directory.GetFiles(Path.Combine(_folder, "read")).Length);
    }

    [Fact]
    public async Task A_message_that_never_left_cannot_have_come_back()
    {
        var scene = await Scene.Approved(await Office());

        Assert.False(await scene.Office.Do(async (KeepBounce keep) => await keep.Of(new BounceNotice(await Id(scene), "ida.marsh@example.org", "5.1.1"))));
    }

    [Fact]
    public async Task A_mailbox_file_is_read_as_it_grows_and_left_as_it_is()
    {
        var scene = await Sent(mbox: true);
        await File.WriteAllTextAsync(Mbox, "From MAILER-DAEMON Thu Jul  7 17:16:05 1994\nSubject: hello\n\nNo notice at all.\n\n");
        Assert.Equal(0, await Read(scene));
        await File.AppendAllTextAsync(Mbox, $"From MAILER-DAEMON Thu Jul  7 17:16:05 1994\n{Encoding.ASCII.GetString(Notice(scene, Gone))}\n");

        Assert.Equal((1, 0), (await Read(scene), await Read(scene)));
        Assert.True(File.Exists(Mbox));
    }

    [Fact]
    public async Task A_folder_that_is_not_there_or_not_set_does_not_stop_the_clock()
    {
        Directory.Delete(_folder, recursive: true);
        Assert.Equal(0, await Read(await Sent()));
        Assert.Equal(0, await fixture.Office.Do((SweepBounces sweep) => sweep.Once(CancellationToken.None)));
    }

    private static Task<int> Read(Scene scene) => scene.Office.Do((SweepBounces sweep) => sweep.Once(CancellationToken.None));

    private static async Task<(MessageState State, string? Problem)> Delivery(Scene scene) =>
        (await scene.Messages()).Where(m => m.Kind == MessageKind.PlanDelivery).Select(m => (m.State, m.LastProblem)).Single();

    private static async Task<string> Id(Scene scene) => $"{(await scene.Messages()).Single(m => m.Kind == MessageKind.PlanDelivery).StableName}@localhost";

    private static byte[] Notice(Scene scene, string status) => BounceReaderTests.Notice(status, "To: Ida Marsh <Ida.Marsh@example.org>", "message/rfc822", Id(scene).Result);

    private async Task<Scene> Sent(bool mbox = false)
    {
        var scene = await Scene.Approved(await Office(mbox), AStudent.Named("Ida", "Marsh") with { MinutesPerWeek = 90 });
        Assert.Equal(1, (await scene.Sweep()).Sent);
        return scene;
    }

    private Task<TestOffice> Office(bool mbox = false) =>
        fixture.Another(opened: true, services => services.AddSingleton(mbox ? new BounceSettings { Mbox = Mbox } : new BounceSettings { Folder = _folder }));
}

public sealed class BouncesOnSqlite(SqliteOffice office) : BouncesTests(office), IClassFixture<SqliteOffice>;

public sealed class BouncesOnPostgreSql(PostgreSqlOffice office) : BouncesTests(office), IClassFixture<PostgreSqlOffice>;
