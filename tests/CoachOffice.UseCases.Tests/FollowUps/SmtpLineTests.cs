using System.Security.Cryptography;
using CoachOffice.Domain.FollowUps;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using MimeKit;
using MimeKit.Cryptography;
using Org.BouncyCastle.Crypto;
using Org.BouncyCastle.OpenSsl;

namespace CoachOffice.UseCases.Tests.FollowUps;

/// <summary>What the server sees: one connection, the rate that was set, the return path, a signature that holds.</summary>
public sealed class SmtpLineTests(SqliteOffice fixture) : IClassFixture<SqliteOffice>
{
    [Fact]
    public async Task A_sweep_uses_one_connection_however_many_messages_go()
    {
        await using var server = new MailServer(MailServer.FreePort());
        var office = await Office(new MailSettings { Port = server.Port, ReturnPath = "bounces@golf.example" });
        await Plans(office, 5);

        Assert.Equal(5, (await Sweep(office)).Sent);

        Assert.Equal((5, 1), (server.Taken.Count, server.Connections));
        Assert.All(server.Senders, sender => Assert.Equal("bounces@golf.example", sender));
        Assert.All(server.Taken, mail => Assert.Equal("office@harbour-road.example", mail.From.Mailboxes.Single().Address));
    }

    [Fact]
    public async Task A_server_that_ends_the_connection_after_every_message_gets_them_all_once_over_new_ones()
    {
        await using var server = new MailServer(MailServer.FreePort()) { EndsConnections = true };
        var office = await Office(new MailSettings { Port = server.Port });
        await Plans(office, 3);

        Assert.Equal(3, (await Sweep(office)).Sent);

        Assert.Equal((3, 3), (server.Taken.Select(m => m.MessageId).Distinct().Count(), server.Connections));
        Assert.All(await Messages(office), m => Assert.Equal((MessageState.Sent, 1), (m.State, m.Attempts)));
    }

    [Fact]
    public async Task No_more_go_in_a_minute_than_the_server_takes_and_what_waits_is_as_new()
    {
        await using var server = new MailServer(MailServer.FreePort());
        var office = await Office(new MailSettings { Port = server.Port, PerMinute = 2 });
        await Plans(office, 5);

        Assert.Equal(2, (await Sweep(office)).Sent);
        Assert.Equal(0, (await Sweep(office)).Sent);

        Assert.All((await Messages(office)).Where(m => m.State == MessageState.Waiting), m => Assert.Equal((0, null, null), (m.Attempts, m.ClaimedBy, m.SendingAt)));
        office.Time.Advance(TimeSpan.FromMinutes(1));
        Assert.Equal(2, (await Sweep(office)).Sent);
        office.Time.Advance(TimeSpan.FromMinutes(1));
        Assert.Equal(1, (await Sweep(office)).Sent);
        Assert.Equal(5, server.Taken.Select(m => m.MessageId).Distinct().Count());
        Assert.Equal(10, await office.Read(db => db.PrivateLinks.CountAsync()));
    }

    /// <summary>RFC 8058 section 4: both headers of one-click stopping are covered by the signature. The signature is checked by the library's own verifier, with the public half of the key.</summary>
    [Fact]
    public async Task With_a_key_the_mail_is_signed_and_the_signature_covers_the_way_to_stop_it()
    {
        await using var server = new MailServer(MailServer.FreePort());
        using var key = RSA.Create(2048);
        var file = Path.Combine(Directory.CreateTempSubdirectory("coachoffice-key-").FullName, "key.pem");
        await File.WriteAllTextAsync(file, key.ExportRSAPrivateKeyPem(), TestContext.Current.CancellationToken);
        var office = await Office(new MailSettings { Port = server.Port, Dkim = new DkimSettings { Domain = "golf.example", Selector = "office", KeyFile = file } });
        await office.Change(db => db.Practices.ExecuteUpdateAsync(p => p.SetProperty(x => x.PublicAddress, "https://golf.example")));
        await Plans(office, 1);

        await Sweep(office);

        var mail = Assert.Single(server.Taken);
        var signature = mail.Headers.Single(h => h.Id == HeaderId.DkimSignature);
        Assert.True(await new DkimVerifier(new OneKey(key)).VerifyAsync(mail, signature, TestContext.Current.CancellationToken));
        var covered = signature.Value.Replace(" ", "", StringComparison.Ordinal).Split(';').Select(p => p.Trim()).Single(p => p.StartsWith("h=", StringComparison.Ordinal))[2..].Split(':').Select(h => h.Trim().ToUpperInvariant()).ToList();
        Assert.Superset(new HashSet<string> { "FROM", "TO", "SUBJECT", "DATE", "MESSAGE-ID", "AUTO-SUBMITTED", "LIST-UNSUBSCRIBE", "LIST-UNSUBSCRIBE-POST" }, covered.ToHashSet());
        mail.Headers[HeaderId.ListUnsubscribe] = "<https://elsewhere.example/stop>";
        Assert.False(await new DkimVerifier(new OneKey(key)).VerifyAsync(mail, signature, TestContext.Current.CancellationToken));
    }

    private static async Task Plans(TestOffice office, int count)
    {
        for (var n = 0; n < count; n++) await Scene.Approved(office, AStudent.Named($"Pupil{n}", "Marsh"));
    }

    private static Task<SweepResult> Sweep(TestOffice office) => office.Do((SweepMessages sweep) => sweep.Once(CancellationToken.None));

    private static Task<List<Message>> Messages(TestOffice office) => office.Read(db => db.Messages.AsNoTracking().Where(m => m.Kind == MessageKind.PlanDelivery).ToListAsync());

    private Task<TestOffice> Office(MailSettings settings) =>
        fixture.Another(opened: true, services => services.AddSingleton(settings with { Host = "127.0.0.1", AllowPlain = true, TimeoutSeconds = 5 }));

    private sealed class OneKey(RSA key) : IDkimPublicKeyLocator
    {
        public AsymmetricKeyParameter LocatePublicKey(string methods, string domain, string selector, CancellationToken cancellationToken = default)
        {
            Assert.Equal(("golf.example", "office"), (domain, selector));
            using var pem = new StringReader(key.ExportSubjectPublicKeyInfoPem());
            using var reader = new PemReader(pem);
            return (AsymmetricKeyParameter)reader.ReadObject();
        }

        public Task<AsymmetricKeyParameter> LocatePublicKeyAsync(string methods, string domain, string selector, CancellationToken cancellationToken = default) =>
            Task.FromResult(LocatePublicKey(methods, domain, selector, cancellationToken));
    }
}
