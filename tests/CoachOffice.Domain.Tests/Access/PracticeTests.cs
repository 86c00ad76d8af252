using CoachOffice.Domain.Access;
using NodaTime;

namespace CoachOffice.Domain.Tests.Access;

public sealed class PracticeTests
{
    private static readonly Guid Id = new("00000000-0000-0000-0000-000000000001");
    private static readonly Instant Now = Instant.FromUtc(2026, 5, 4, 10, 0);

    [Fact]
    public void A_practice_is_kept_as_entered_without_spaces_around_and_without_a_last_slash()
    {
        var practice = Practice.Open(
            Id,
            new PracticeDetails
            {
                Name = " Green Lane ",
                Zone = "Europe/London",
                Currency = "GBP",
                Units = UnitSystem.Imperial,
                EmergencyNumber = " 999 ",
                RequiresSecondFactor = true,
                MailFrom = " office@example.org ",
                PublicAddress = "https://lessons.example.org/",
            },
            isDemo: true,
            Now);
        Assert.Equal((Id, true, Now), (practice.Id, practice.IsDemo, practice.OpenedAt));
        Assert.Equal(("Green Lane", "Europe/London", "GBP", UnitSystem.Imperial), (practice.Name, practice.Zone, practice.Currency, practice.Units));
        Assert.Equal(("999", true, "office@example.org"), (practice.EmergencyNumber, practice.RequiresSecondFactor, practice.MailFrom));
        Assert.Equal("https://lessons.example.org", practice.PublicAddress);
    }

    [Fact]
    public void Where_nothing_else_was_entered_it_is_metric_calls_112_and_serves_this_machine()
    {
        var practice = Practice.Open(Id, new PracticeDetails { Name = "Green Lane", Zone = "Europe/London", Currency = "EUR" }, isDemo: false, Now);
        Assert.Equal((UnitSystem.Metric, "112", false, "", "http://localhost:5180", false), (practice.Units, practice.EmergencyNumber, practice.RequiresSecondFactor, practice.MailFrom, practice.PublicAddress, practice.IsDemo));
    }
}
