using System.Net;

namespace CoachOffice.Web.Tests.Access;

public sealed class SignInTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _owner = null!;

    public async ValueTask InitializeAsync() => _owner = await _office.OpensThePractice();

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task Signing_in_leads_to_the_page_that_was_asked_for()
    {
        var person = new Visitor(_office);
        await person.Open("/settings");
        Assert.Equal("/sign-in", person.Path);

        await person.Send("form", ("Input.Email", Owner.Email), ("Input.Password", Owner.Password));

        Assert.Equal("/settings", person.Path);
    }

    [Fact]
    public async Task A_foreign_address_is_never_followed_after_signing_in()
    {
        var person = new Visitor(_office);
        await person.Open("/sign-in?next=https://elsewhere.example/");

        await person.Send("form", ("Input.Email", Owner.Email), ("Input.Password", Owner.Password));

        Assert.Equal("/", person.Path);
        Assert.Equal("localhost", person.Answer.RequestMessage!.RequestUri!.Host);
    }

    [Fact]
    public async Task A_wrong_password_and_an_unknown_address_get_the_same_sentence()
    {
        var wrong = await _office.SignsIn(password: "not the right one at all");
        var unknown = await _office.SignsIn("nobody@example.org");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, wrong.Status);
        Assert.Equal(wrong.Alert, unknown.Alert);
        Assert.Contains("do not fit together", wrong.Alert, StringComparison.Ordinal);
    }

    [Fact]
    public async Task After_five_wrong_tries_even_the_right_password_rests()
    {
        for (var i = 0; i < 5; i++) await _office.SignsIn(password: "not the right one at all");

        var right = await _office.SignsIn();

        Assert.Equal("/sign-in", right.Path);
        Assert.Contains("rests after too many wrong tries", right.Alert, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Signing_out_clears_what_the_browser_kept()
    {
        await _owner.Send("form[action='/sign-out']");

        Assert.Equal("You are signed out", _owner.Heading);
        Assert.Equal("\"cache\", \"storage\"", Assert.Single(_owner.Way[0].Headers.GetValues("Clear-Site-Data")));
        await _owner.Open("/");
        Assert.Equal("/sign-in", _owner.Path);
    }

    [Fact]
    public async Task A_closed_account_cannot_sign_in()
    {
        var coach = await _owner.LetsIn(_office, "coach");
        Assert.Equal("/", coach.Path);
        await _owner.Open("/settings/accounts");

        await _owner.Send("form[action*='Close']");

        Assert.Contains("The account is closed", _owner.Text, StringComparison.Ordinal);
        Assert.Equal("/sign-in", (await _office.SignsIn("coach@example.org", Owner.FirstPassword)).Path);
    }

    [Fact]
    public async Task A_form_without_proof_of_origin_is_refused_with_a_way_out()
    {
        await _owner.Open("/settings");

        await _owner.Send("main form", ("form-proof", null));

        Assert.Equal(HttpStatusCode.BadRequest, _owner.Status);
        Assert.Equal("That form was too old to send", _owner.Heading);
        Assert.Contains("back button", _owner.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_session_cookie_is_out_of_reach_of_scripts_and_other_sites()
    {
        var person = await _office.SignsIn();

        var cookie = person.Way.SelectMany(a => a.Headers.TryGetValues("Set-Cookie", out var set) ? set : []).Single(c => c.StartsWith("coachoffice=", StringComparison.Ordinal));

        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=lax", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("path=/", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("domain=", cookie, StringComparison.OrdinalIgnoreCase);
    }
}
