namespace CoachOffice.Browser.Tests.Bookings;

/// <summary>Places, offerings, hours and terms, empty and filled, with long names.</summary>
public sealed class SetUpTests(Chromium chromium) : IClassFixture<Chromium>
{
    [Fact]
    public async Task A_practice_is_set_up_for_bookings_and_every_page_is_fit_to_be_seen()
    {
        await using var office = new RunningOffice();
        await using var window = await chromium.Open();
        var owner = new Person(window, office.Url);
        await SettingUp.Opens(owner);
        foreach (var page in new[] { "places", "offerings", "hours", "booking-terms" })
        {
            await owner.GoTo("/settings/" + page);
            await window.LookAt($"set-up-{page}-empty");
        }

        await SettingUp.AddsPlace(owner, "Harbour Road range", "1 Harbour Road, by the old lighthouse", "Bay 1", "Bay 2 with the mirror and the wide mat for left-handed players", "Studio");
        await SettingUp.AddsPlace(owner, "The Old Links of Saint Mary beyond the Estuary", "Shore Lane 14, turn left behind the fishmonger, park at the upper gate");
        await owner.Page.TypeAsync("[name^=Ways]", "25");
        await owner.Press("Keep the ways");
        await window.LookAt("set-up-place");
        await SettingUp.AddsOffering(owner, "Private hour", "private", "45,00");
        await SettingUp.AddsOffering(owner, "Short game evening for those who come back after the winter", "group", "20", "6", bays: false);
        await owner.GoTo("/settings/offering");
        await owner.Type("Input.Name", "Private hour");
        await owner.Type("Input.PriceMinor", "25");
        await owner.Press("Add the offering");
        await window.LookAt("set-up-offering-refused");
        await owner.GoTo("/settings/offerings");
        await window.LookAt("set-up-offerings");
        await SettingUp.AddsHours(owner, "09:00", "12:30", 1, 2, 3, 4, 5);
        await SettingUp.AddsHours(owner, "18:00", "00:00", 6, 7);
        await owner.Type("Except.FromDay", "2026-12-24");
        await owner.Type("Except.UntilDay", "2027-01-02");
        await owner.Type("Except.Note", "Between the years");
        await owner.Tick("Except.IsPractice", "true");
        await owner.Press("Keep it");
        await window.LookAt("set-up-hours");
        await owner.GoTo("/settings/places");
        await window.LookAt("set-up-places");
        await owner.GoTo("/settings");
        await window.LookAt("set-up-settings");

        Assert.Empty(window.Complaints);
    }
}
