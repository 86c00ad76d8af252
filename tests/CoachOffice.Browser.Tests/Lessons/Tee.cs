namespace CoachOffice.Browser.Tests.Lessons;

/// <summary>A coach at the tee with a new lesson's sheet open.</summary>
internal static class Tee
{
    public const string Tilt = "impact-spine-tilt";

    /// <summary>Opens a practice with one student and one lesson; gives the lesson's address.</summary>
    public static async Task<string> Begins(this Person coach)
    {
        await coach.GoTo("/");
        await coach.Type("Input.OwnerName", "Marianne Wetherby");
        await coach.Type("Input.Email", "marianne@example.org");
        await coach.Type("Input.Password", Person.Password);
        await coach.Type("Input.PracticeName", "Hill Lane Golf Lessons");
        await coach.Type("Input.Zone", "Europe/London");
        await coach.Press("Open the practice");
        await coach.Press("Not now");
        await coach.GoTo("/students/new");
        await coach.Type("Input.GivenName", "Oluwaseun-Bartholomew");
        await coach.Type("Input.FamilyName", "Featherstonehaugh-Wolfeschlegelstein");
        await coach.Type("Input.Email", "oluwaseun@example.org");
        await coach.Type("Input.BirthDate", "1988-06-14");
        await coach.Press("Add the student");
        await coach.Press("Record a lesson");
        await coach.Press("Driver");
        return coach.Path;
    }

    /// <summary>Presses a button that does not lead to another page.</summary>
    public static async Task Taps(this Person coach, string text) =>
        Assert.True(await coach.Page.EvaluateFunctionAsync<bool>("t => { const b = [...document.querySelectorAll('button')].find(b => b.textContent.trim() === t && b.offsetParent !== null); b?.click(); return b !== undefined; }", text), $"nothing says '{text}'");

    public static Task TypesTilt(this Person coach, string value) => coach.Type($"readings[{Tilt}]", value);

    /// <summary>What would be sent of a measure: all swings in a row.</summary>
    public static Task<string> Whole(this Person coach, string measure = Tilt) =>
        coach.Page.EvaluateFunctionAsync<string>("m => new FormData(document.getElementById('sheet')).get(`readings[${m}]`)", measure);

    /// <summary>What the field shows.</summary>
    public static Task<string> Shown(this Person coach, string measure = Tilt) =>
        coach.Page.EvaluateFunctionAsync<string>("m => document.querySelector(`[name='readings[${m}]']`).value", measure);

    /// <summary>Waits until the page says this somewhere.</summary>
    public static Task Hears(this Person coach, string text) =>
        coach.Page.WaitForFunctionAsync("t => document.body.innerText.includes(t)", text);

    /// <summary>How many records this device keeps.</summary>
    public static Task<int> KeptHere(this Person coach) => coach.Page.EvaluateExpressionAsync<int>("Object.keys(localStorage).filter(k => k.startsWith('coachoffice-kept:')).length");
}
