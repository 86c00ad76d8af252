using PuppeteerSharp;

namespace CoachOffice.Browser.Tests;

/// <summary>What a person does at a page: reads, types, presses, follows.</summary>
public sealed class Person(Window window, string url)
{
    public const string Password = "four quiet herons walk";

    public IPage Page => window.Page;

    public Window Window => window;

    public string Path => new Uri(Page.Url).AbsolutePath;

    public Task GoTo(string path) => Page.GoToAsync(path.StartsWith("http", StringComparison.Ordinal) ? path : url + path, WaitUntilNavigation.Load);

    /// <summary>Types into the field of this name, over what was there; of several, into that of a row, from 0.</summary>
    public async Task Type(string name, string value, int row = 0)
    {
        var fields = await Page.QuerySelectorAllAsync($"[name='{name}']");
        if (row >= fields.Length) throw new InvalidOperationException($"{Page.Url} has no field {name} in row {row}");
        var field = fields[row];
        await field.EvaluateFunctionAsync("(f, v) => { f.value = v; f.dispatchEvent(new Event('input', { bubbles: true })); f.dispatchEvent(new Event('change', { bubbles: true })); }", value);
    }

    /// <summary>Chooses one of the radio buttons or check boxes of a name.</summary>
    public Task Tick(string name, string value) => Page.EvaluateFunctionAsync("(n, v) => document.querySelector(`[name='${n}'][value='${v}']`).click()", name, value);

    /// <summary>Presses the button or follows the link with this text and waits for the page that comes.</summary>
    public async Task Press(string text)
    {
        var before = Page.WaitForNavigationAsync(new NavigationOptions { WaitUntil = [WaitUntilNavigation.Load] });
        var found = await Page.EvaluateFunctionAsync<bool>(
            """
            t => {
              const all = [...document.querySelectorAll('button, a.button, a, summary')];
              const it = all.find(b => b.textContent.trim() === t && b.offsetParent !== null) ?? all.find(b => b.textContent.trim().startsWith(t) && b.offsetParent !== null);
              if (it) setTimeout(() => it.click(), 0);
              return it !== undefined;
            }
            """,
            text);
        if (!found) Assert.Fail($"{Page.Url} has nothing to press that says '{text}'.\n{await Text()}");
        await before;
    }

    /// <summary>Everything a person can read on the page.</summary>
    public Task<string> Text() => Page.EvaluateExpressionAsync<string>("document.body.innerText");

    /// <summary>The page says this.</summary>
    public async Task Sees(string text) => Assert.Contains(text, await Text(), StringComparison.OrdinalIgnoreCase);

    /// <summary>Opens the first form of a kind in its place.</summary>
    public async Task OpensForm(string kind)
    {
        await Page.ClickAsync($"a.opener[href*='open={kind}-']");
        await Page.WaitForSelectorAsync($"details[open][id^='{kind}-'] form");
    }

    /// <summary>Opens every fold so that all of the page is seen.</summary>
    public Task Unfold() => Page.EvaluateExpressionAsync("document.querySelectorAll('details').forEach(d => d.open = true)");

    /// <summary>Signs in when the office asks for it, as after a long time away.</summary>
    public async Task SignInAgain(string path)
    {
        await GoTo(path);
        if (Path != "/sign-in") return;
        await Type("Input.Email", "marianne@example.org");
        await Type("Input.Password", Password);
        await Press("Sign in");
        await GoTo(path);
    }
}
