namespace CoachOffice.Browser.Tests.Rulebook;

/// <summary>What an instructor does again and again with the rulebook: teaches by it, changes it, looks what that would do, puts it into force.</summary>
internal sealed class RulebookWalk(Person coach)
{
    private string _student = "";

    public async Task OpensThePracticeWithOneStudent()
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
        await coach.Type("Input.BirthDate", "1988-06-14");
        await coach.Press("Add the student");
        _student = coach.Path;
    }

    /// <summary>What the draft of a new driver lesson says.</summary>
    public async Task<string> Drafts(params (string Measure, string Readings)[] readings)
    {
        await coach.GoTo(_student);
        await coach.Press("Record a lesson");
        await coach.Press("Driver");
        foreach (var (measure, text) in readings) await coach.Type($"readings[{measure}]", text);
        await coach.Press("Make the draft");
        return await coach.Text();
    }

    /// <summary>Finds a fault as somebody who asks "what would you do about ...".</summary>
    public async Task AsksAbout(string fault)
    {
        await coach.GoTo("/rulebook");
        await coach.Type("about", fault);
        await coach.Press("Show");
    }

    /// <summary>Types into a row of a list, after adding one where the list is too short.</summary>
    public async Task TypesRow(string list, string name, int row, string value)
    {
        var rows = await coach.Page.EvaluateFunctionAsync<int>("l => document.querySelectorAll(`[data-rows='${l}'] > li`).length", list);
        if (row >= rows) await coach.Page.EvaluateFunctionAsync("l => document.querySelector(`button[name=row][value='add:${l}']`).click()", list);
        await coach.Type(name, value, row);
    }

    /// <summary>The page says this without being sent.</summary>
    public Task SeesWhileTyping(string said) => coach.Page.WaitForFunctionAsync("t => document.querySelector('#entry').innerText.includes(t)", said);

    public async Task Keeps(string picture)
    {
        await coach.Window.LookAt(picture);
        await coach.Press("Keep with my changes");
        Assert.Equal("/rulebook/changes", coach.Path);
    }

    /// <summary>Follows a worked case that comes out otherwise, and gives its student another reading.</summary>
    public async Task MendsTheCase(string link, string measure, string value)
    {
        await coach.Press(link);
        var row = await coach.Page.EvaluateFunctionAsync<int>("m => [...document.querySelectorAll(`[name='readings.what']`)].findIndex(f => f.value === m)", measure);
        await coach.Type("readings.value", value, row);
        await Keeps("edit-case");
    }

    /// <summary>Compares with the past, sees the one student of it, and then puts the changes into force.</summary>
    public async Task LooksAndPutsIntoForce(string picture, string differs, string why, int edition)
    {
        await coach.Window.LookAt($"{picture}-changes");
        await coach.Press("See which past drafts would differ");
        await coach.Press("Compare");
        await coach.Page.WaitForFunctionAsync("() => /would differ/.test(document.querySelector('#state')?.textContent ?? '')");
        await coach.Sees("Wolfeschlegelstein");
        await coach.Sees(differs);
        await coach.Window.LookAt($"{picture}-what-would-change");
        await coach.GoTo("/rulebook/changes");
        await coach.Type("Why", why);
        await coach.Press("Put ");
        Assert.Equal($"/rulebook/history/{edition}", coach.Path);
        await coach.Sees(why);
        await coach.Window.LookAt($"{picture}-edition");
    }
}
