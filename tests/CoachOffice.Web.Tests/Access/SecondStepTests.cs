using System.Text;

namespace CoachOffice.Web.Tests.Access;

public sealed class SecondStepTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _owner = null!;

    public async ValueTask InitializeAsync() => _owner = await _office.OpensThePractice();

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    // RFC 6238 appendix B, SHA-1 rows.
    [Theory]
    [InlineData(59, "94287082")]
    [InlineData(1111111109, "07081804")]
    [InlineData(1234567890, "89005924")]
    [InlineData(2000000000, "69279037")]
    public void Codes_are_those_of_the_standard(long seconds, string code) =>
        Assert.Equal(code, TotpCode.Of(Encoding.ASCII.GetBytes("12345678901234567890"), seconds, 8));

    [Fact]
    public async Task With_the_second_step_on_a_password_alone_opens_nothing()
    {
        await TurnOn();

        var person = await _office.SignsIn();

        Assert.Equal("/sign-in/code", person.Path);
        await person.Open("/students");
        Assert.Equal("/sign-in", person.Path);
    }

    [Fact]
    public async Task A_code_opens_once()
    {
        var key = await TurnOn();
        var code = Code(key, stepsAhead: 1);
        var first = await _office.SignsIn();
        await first.Send("form", ("Code", code));
        Assert.Equal("/", first.Path);

        var second = await _office.SignsIn();
        await second.Send("form", ("Code", code));

        Assert.Equal("/sign-in/code", second.Path);
        Assert.Contains("was used before", second.Alert, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_recovery_code_opens_once()
    {
        await TurnOn();
        var code = _owner.Page.QuerySelector(".codes li")!.TextContent;
        Assert.Equal(10, _owner.Page.QuerySelectorAll(".codes li").Length);
        var first = await _office.SignsIn();
        await first.Send("form", ("Code", code));
        Assert.Equal("/", first.Path);

        var second = await _office.SignsIn();
        await second.Send("form", ("Code", code));

        Assert.Equal("/sign-in/code", second.Path);
    }

    [Fact]
    public async Task Where_the_practice_asks_everyone_a_session_without_one_reaches_only_its_set_up()
    {
        await _owner.Open("/settings");
        await _owner.Send("main form", ("Input.RequiresSecondFactor", "true"));

        await _owner.Open("/settings");

        Assert.Equal("/account/second-factor", _owner.Path);
        Assert.Contains("asks everyone for a second step", _owner.Text, StringComparison.Ordinal);
        await TurnOn();
        await _owner.Open("/settings");
        Assert.Equal("Settings", _owner.Heading);
    }

    [Fact]
    public async Task An_owner_helps_a_coach_who_lost_the_phone()
    {
        var coach = await _owner.LetsIn(_office, "coach");
        await TurnOn(coach);
        Assert.Equal("/sign-in/code", (await _office.SignsIn("coach@example.org", Owner.FirstPassword)).Path);
        await _owner.Open("/settings/accounts");

        await _owner.Send("form[action*='Reset']");

        Assert.Equal("/", (await _office.SignsIn("coach@example.org", Owner.FirstPassword)).Path);
    }

    private Task<byte[]> TurnOn() => TurnOn(_owner);

    /// <summary>The person sets the second step up; gives the key.</summary>
    private static async Task<byte[]> TurnOn(Visitor person)
    {
        await person.Open("/account/second-factor");
        await person.Send("form[action*='Start']");
        Assert.StartsWith("data:image/svg+xml;base64,", person.Page.QuerySelector("img.qr")!.GetAttribute("src"), StringComparison.Ordinal);
        var key = TotpCode.Key(person.Page.QuerySelector("main code")!.TextContent);
        await person.Send("form[action*='Confirm']", ("Code", Code(key)));
        Assert.Contains("Keep these recovery codes", person.Text, StringComparison.Ordinal);
        return key;
    }

    private static string Code(byte[] key, int stepsAhead = 0) => TotpCode.Of(key, TimeProvider.System.GetUtcNow().ToUnixTimeSeconds() + 30 * stepsAhead, 6);
}
