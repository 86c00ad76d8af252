using System.Net;

namespace CoachOffice.Web.Tests.Bookings;

/// <summary>A practice set up for bookings, through its pages.</summary>
internal static class SettingUp
{
    /// <summary>Adds a place with its bays and stays on its page.</summary>
    public static async Task AddsPlace(this Visitor owner, string name, params string[] bays)
    {
        await owner.Open("/settings/places");
        await owner.Send("form[method=post]:has([name='Input.Name'])", ("Input.Name", name));
        foreach (var bay in bays) await owner.Send("form:has(#bay-new)", ("Bay.Name", bay));
        Assert.Equal(HttpStatusCode.OK, owner.Status);
    }

    /// <summary>Adds an offering of the owner's at every place, with all bays.</summary>
    public static async Task AddsOffering(this Visitor owner, string name, string price, params (string Name, string? Value)[] more)
    {
        await owner.Open("/settings/offering");
        await owner.Send("form[method=post]:has([name='Input.Name'])", [("Input.Name", name), ("Input.PriceMinor", price), .. more]);
        Assert.Equal("/settings/offerings", owner.Path);
    }

    /// <summary>Adds hours at the first place.</summary>
    public static async Task AddsHours(this Visitor coach, string day, string from, string until)
    {
        await coach.Open("/settings/hours");
        await coach.Send("form:has([name='Input.From'])", ("Input.Days", day), ("Input.From", from), ("Input.Until", until));
        Assert.Equal(HttpStatusCode.OK, coach.Status);
    }
}
