namespace CoachOffice.Browser.Tests.Bookings;

/// <summary>An office that takes bookings: two places, bays, an offering and hours, made at its pages.</summary>
internal static class SettingUp
{
    public static async Task Opens(Person owner)
    {
        await owner.GoTo("/");
        await owner.Type("Input.OwnerName", "Marianne Wetherby");
        await owner.Type("Input.Email", "marianne@example.org");
        await owner.Type("Input.Password", Person.Password);
        await owner.Type("Input.PracticeName", "Hill Lane Golf Lessons");
        await owner.Type("Input.Zone", "Europe/London");
        await owner.Type("Input.Currency", "GBP");
        await owner.Tick("Input.Start", "empty");
        await owner.Press("Open the practice");
    }

    public static async Task AddsPlace(Person owner, string name, string address, params string[] bays)
    {
        await owner.GoTo("/settings/places");
        await owner.Type("Input.Name", name);
        await owner.Type("Input.Address", address);
        await owner.Press("Add the place");
        foreach (var bay in bays)
        {
            await owner.Page.TypeAsync("#bay-new", bay);
            await owner.Press("Add it");
        }
    }

    public static async Task AddsOffering(Person owner, string name, string kind, string price, string students = "1", bool bays = true)
    {
        await owner.GoTo("/settings/offering");
        await owner.Type("Input.Name", name);
        await owner.Type("Input.Kind", kind);
        await owner.Type("Input.PriceMinor", price);
        await owner.Type("Input.Capacity", students);
        await owner.Page.EvaluateFunctionAsync("bays => { document.querySelector('#Input_Places > .choice input').checked = true; document.querySelectorAll('.bays:first-of-type input').forEach(b => b.checked = bays); }", bays);
        await owner.Press("Add the offering");
    }

    public static async Task AddsHours(Person owner, string from, string until, params int[] days)
    {
        await owner.GoTo("/settings/hours");
        foreach (var day in days) await owner.Tick("Input.Days", day.ToString(null, null));
        await owner.Type("Input.From", from);
        await owner.Type("Input.Until", until);
        await owner.Press("Add the hours");
    }
}
