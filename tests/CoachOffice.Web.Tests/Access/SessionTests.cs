using Microsoft.Extensions.Time.Testing;

namespace CoachOffice.Web.Tests.Access;

public sealed class SessionTests : IAsyncLifetime
{
    private readonly FakeTimeProvider _clock = new(TimeProvider.System.GetUtcNow());
    private readonly OfficeHost _office;
    private Visitor _owner = null!;

    public SessionTests() => _office = new OfficeHost { Clock = _clock };

    public async ValueTask InitializeAsync() => _owner = await _office.OpensThePractice();

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task A_session_ends_after_a_working_day_however_busy_it_was()
    {
        for (var hours = 0; hours < 11; hours++)
        {
            _clock.Advance(TimeSpan.FromHours(1));
            await _owner.Open("/students");
            Assert.Equal("/students", _owner.Path);
        }

        _clock.Advance(TimeSpan.FromMinutes(61));
        await _owner.Open("/students");

        Assert.Equal("/sign-in", _owner.Path);
    }

    [Fact]
    public async Task Signing_out_everywhere_ends_the_tablet_that_was_left_behind()
    {
        var tablet = await _office.SignsIn();
        await _owner.Open("/account");

        await _owner.Send("form[action*='Everywhere']");

        Assert.Equal("/signed-out", _owner.Path);
        _clock.Advance(TimeSpan.FromMinutes(3));
        await tablet.Open("/students");
        Assert.Equal("/sign-in", tablet.Path);
    }

    [Fact]
    public async Task A_new_password_ends_the_other_sessions_and_keeps_this_one()
    {
        var tablet = await _office.SignsIn();
        await _owner.Open("/account");

        await _owner.Send("form[action*='Password']", ("Input.Current", Owner.Password), ("Input.New", "nine wide rivers bend"));

        Assert.Contains("Your password is changed", _owner.Text, StringComparison.Ordinal);
        _clock.Advance(TimeSpan.FromMinutes(3));
        await tablet.Open("/");
        Assert.Equal("/sign-in", tablet.Path);
        await _owner.Open("/");
        Assert.Equal("/", _owner.Path);
    }

    [Fact]
    public async Task A_wrong_present_password_changes_nothing()
    {
        await _owner.Open("/account");

        await _owner.Send("form[action*='Password']", ("Input.Current", "something else entirely"), ("Input.New", "nine wide rivers bend"));

        Assert.Contains("not the password you have now", _owner.Alert, StringComparison.Ordinal);
        Assert.Equal("/", (await _office.SignsIn()).Path);
    }

    [Fact]
    public async Task A_closed_account_loses_its_open_session_too()
    {
        var coach = await _owner.LetsIn(_office, "coach");
        await _owner.Open("/settings/accounts");
        await _owner.Send("form[action*='Close']");

        _clock.Advance(TimeSpan.FromMinutes(3));
        await coach.Open("/students");

        Assert.Equal("/sign-in", coach.Path);
    }

    [Fact]
    public async Task A_session_with_a_second_step_stays_one_when_it_is_looked_at_again()
    {
        await _owner.TurnsOnTheSecondStep();
        await _owner.Open("/settings");
        await _owner.Send("main form", ("Input.RequiresSecondFactor", "true"));

        _clock.Advance(TimeSpan.FromMinutes(5));
        await _owner.Open("/students");

        Assert.Equal("/students", _owner.Path);
    }
}
