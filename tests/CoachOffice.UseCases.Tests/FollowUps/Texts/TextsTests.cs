using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.FollowUps.Texts;
using CoachOffice.UseCases.Tests.Bookings.Mail;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;

namespace CoachOffice.UseCases.Tests.FollowUps.Texts;

/// <summary>Notes about lessons as text messages: through the outbox as mail, to a gateway on this machine or a folder.</summary>
public sealed class TextsTests(SqliteOffice fixture) : IClassFixture<SqliteOffice>
{
    private const string Secret = "the gateway's secret";
    private static readonly LocalDateTime Start = new(2026, 3, 9, 10, 0);

    [Fact]
    public async Task A_booking_is_told_in_a_few_words_signed_and_under_its_own_name()
    {
        using var gateway = new Gateway();
        var office = await Booked(gateway, AStudent.Named("Ann", "Booker"));

        Assert.Equal(1, (await Sweep(office)).Sent);

        var (body, key, signature) = Assert.Single(gateway.Posted);
        var sent = JsonDocument.Parse(body).RootElement;
        var name = (await office.Read(db => db.Messages.SingleAsync(m => m.Kind == MessageKind.BookingInvitation))).StableName;
        Assert.Equal((name, name, "+441632960001"), (key, sent.GetProperty("id").GetString(), sent.GetProperty("to").GetString()));
        Assert.Equal($"sha256={Convert.ToHexStringLower(HMACSHA256.HashData(Encoding.UTF8.GetBytes(Secret), Encoding.UTF8.GetBytes(body)))}", signature);
        Assert.Matches("^Harbour Road Golf Practice: lesson booked, Monday 9 March 2026, 10:00 to 11:00 \\(Europe/London\\)\\. \\S+/v/[A-Za-z0-9_-]{43}$", sent.GetProperty("text").GetString());
        Assert.False(Directory.Exists(Path.Combine(office.Folder, "mail")));
    }

    [Theory]
    [InlineData(204, "sent", null)]
    [InlineData(400, "needs-attention", "text-refused")]
    [InlineData(503, "waiting", "text-gateway-busy")]
    [InlineData(429, "waiting", "text-gateway-busy")]
    [InlineData(302, "waiting", "text-gateway-down")]
    [InlineData(500, "waiting", "sent-unknown")]
    public async Task What_the_gateway_answers_decides_whether_it_went(int status, string state, string? problem)
    {
        using var gateway = new Gateway { Status = status };
        var office = await Booked(gateway, AStudent.Named("Ann", "Booker"));

        await Sweep(office);

        var message = await office.Read(db => db.Messages.SingleAsync(m => m.Kind == MessageKind.BookingInvitation));
        Assert.Equal((state, problem), (Domain.Terms.Of(message.State), message.LastProblem));
        if (state != "waiting") return;
        gateway.Status = 200;
        office.Time.Advance(TimeSpan.FromMinutes(3));
        Assert.Equal(1, (await Sweep(office)).Sent);
        Assert.Single(gateway.Posted.Select(p => p.Key).Distinct());
    }

    [Fact]
    public async Task A_gateway_that_hangs_up_may_have_taken_it()
    {
        using var deaf = new HangingUp();
        var office = await Booked(deaf.Url, AStudent.Named("Ann", "Booker"));

        await Sweep(office);

        Assert.Equal((MessageState.Waiting, Problems.SentUnknown), await office.Read(db => db.Messages.Where(m => m.Kind == MessageKind.BookingInvitation).Select(m => new ValueTuple<MessageState, string?>(m.State, m.LastProblem)).SingleAsync()));
    }

    [Fact]
    public async Task A_gateway_that_is_not_there_certainly_did_not_take_it()
    {
        using var gateway = new Gateway();
        var office = await Booked(gateway, AStudent.Named("Ann", "Booker"));
        gateway.Dispose();

        await Sweep(office);

        Assert.Equal((MessageState.Waiting, "text-gateway-down"), await office.Read(db => db.Messages.Where(m => m.Kind == MessageKind.BookingInvitation).Select(m => new ValueTuple<MessageState, string?>(m.State, m.LastProblem)).SingleAsync()));
    }

    [Fact]
    public async Task The_reminder_goes_the_same_way()
    {
        using var gateway = new Gateway();
        var office = await Booked(gateway, AStudent.Named("Ann", "Booker"));
        await Sweep(office);
        office.Time.SetUtcNow(new DateTimeOffset(2026, 3, 8, 11, 0, 0, TimeSpan.Zero));

        Assert.Equal(1, (await Sweep(office)).Sent);

        Assert.Contains("a reminder of the lesson on Monday 9 March 2026, 10:00 to 11:00", gateway.Posted[^1].Body, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_minors_goes_to_the_guardians_phone_and_never_to_their_own()
    {
        using var gateway = new Gateway();
        var office = await Booked(gateway, AStudent.Junior("Kit", "Marsh") with { Phone = "+44 1632 960099" });

        await Sweep(office);

        Assert.Equal("+441632960002", JsonDocument.Parse(Assert.Single(gateway.Posted).Body).RootElement.GetProperty("to").GetString());
    }

    [Fact]
    public async Task Without_a_gateway_texts_lie_in_a_folder_and_a_plan_never_goes_as_text()
    {
        var office = await Booked("", AStudent.Named("Ann", "Booker"));
        await Sweep(office);

        Assert.StartsWith("To: +441632960001", await File.ReadAllTextAsync(Assert.Single(Directory.GetFiles(Path.Combine(office.Folder, "texts"))), TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Equal([MessagePurpose.Appointment], Enum.GetValues<MessageKind>().Where(k => office.Services.CreateScope().ServiceProvider.GetRequiredService<OfficeLetters>().Of(k) is ITextLetter).Select(MessagePurposes.Of).Distinct());
    }

    [Fact]
    public async Task A_number_without_its_countrys_code_hours_out_of_range_and_strange_zones_are_refused()
    {
        var office = await fixture.Another(opened: true);
        var student = await office.Register(AStudent.Named("Ann", "Booker") with { Phone = "01632 960001" });

        Assert.Equal("contact-number", await Code(office, student, new ContactWishes { AppointmentsByText = true }));
        Assert.Equal("contact-quiet", await Code(office, student, new ContactWishes { QuietFrom = 22 }));
        Assert.Equal("contact-hour", await Code(office, student, new ContactWishes { QuietFrom = 22, QuietUntil = 24 }));
        Assert.Equal("contact-zone", await Code(office, student, new ContactWishes { Zone = "Mars/Olympus" }));
        Assert.Equal(UseCases.Access.NotAllowed.Code, (await office.Refuses((KeepContact keep) => keep.For(student, ContactWishes.Usual, new Actor(null, "nobody", null)))).Single().Code);
    }

    private static async Task<string> Code(TestOffice office, StudentId student, ContactWishes wishes) => (await office.Refuses((KeepContact keep) => keep.For(student, wishes, office.Desk))).Single().Code;

    private static Task<SweepResult> Sweep(TestOffice office) => office.Do((SweepMessages sweep) => sweep.Once(CancellationToken.None));

    private Task<TestOffice> Booked(Gateway gateway, StudentDetails details) => Booked(gateway.Url, details);

    private async Task<TestOffice> Booked(string url, StudentDetails details)
    {
        var office = await fixture.Another(opened: true, services => services.AddSingleton(new TextSettings { Url = url, Secret = Secret, TimeoutSeconds = 5 }));
        var lessons = await BookedLessons.Of(office);
        var student = await office.Register(details);
        await office.Must((KeepContact keep) => keep.For(student, new ContactWishes { AppointmentsByText = true }, Actor.Student));
        await lessons.Book(Start, student);
        office.Time.Advance(TimeSpan.FromMinutes(3));
        return office;
    }
}
