namespace CoachOffice.Web.Tests.Rulebook;

/// <summary>Changes of the rulebook that many tests begin with; each ends on the page of one's changes.</summary>
internal static class RulebookEdits
{
    /// <summary>Gives the driver's tempo an aim inside its range, which no worked case looks at.</summary>
    public static async Task AimsTheTempo(this Visitor coach, string high)
    {
        await coach.Open("/rulebook/edit/range/tempo-ratio");
        await coach.Send("form#entry", ("driver.aim-low", "2.8"), ("driver.aim-high", high), ("do", "keep"));
        Assert.Equal("/rulebook/changes", coach.Path);
    }

    /// <summary>Takes the first drill off a ladder's rung of half swings, so that the next one is given.</summary>
    public static async Task ShortensALadder(this Visitor coach, string ladder)
    {
        await coach.Open($"/rulebook/edit/progression/{ladder}");
        await coach.Send("form#entry", ("row", "drop:half:0"));
        await coach.Send("form#entry", ("do", "keep"));
        Assert.Equal("/rulebook/changes", coach.Path);
    }
}
