using CoachOffice.Domain.Access;

namespace CoachOffice.Domain.Tests.Access;

public sealed class PracticeDetailsTests
{
    private static readonly PracticeDetails Good = new() { Name = "Green Lane", Zone = "Europe/London", Currency = "EUR" };

    [Fact]
    public void Name_zone_and_currency_are_enough() => Assert.Empty(Good.Check());

    [Theory]
    [InlineData("", false)]
    [InlineData(" ", false)]
    [InlineData("G", true)]
    public void A_practice_has_a_name(string name, bool fits) => Refused.Unless(fits, (Good with { Name = name }).Check(), "practice-name", "Name");

    [Theory]
    [InlineData(120, true)]
    [InlineData(121, false)]
    public void Its_name_has_up_to_120_characters(int length, bool fits) => Refused.Unless(fits, (Good with { Name = new string('g', length) }).Check(), "practice-name", "Name");

    [Fact]
    public void Its_name_stands_in_one_line() => Refused.Only((Good with { Name = "Green\nLane" }).Check(), "practice-name-line", "Name");

    [Theory]
    [InlineData("Pacific/Auckland", true)]
    [InlineData("Green Lane time", false)]
    [InlineData("", false)]
    public void Its_zone_is_in_the_table_of_zones(string zone, bool fits) => Refused.Unless(fits, (Good with { Zone = zone }).Check(), "practice-zone", "Zone");

    [Theory]
    [InlineData("NZD", true)]
    [InlineData("EU", false)]
    [InlineData("EURO", false)]
    [InlineData("eur", false)]
    [InlineData("EUr", false)]
    [InlineData("E1R", false)]
    [InlineData("XYZ", false)]
    public void Its_currency_is_in_the_list_of_ISO_4217(string currency, bool fits) => Refused.Unless(fits, (Good with { Currency = currency }).Check(), "practice-currency", "Currency");

    [Theory]
    [InlineData("11", true)]
    [InlineData("+49 30-112/0", true)]
    [InlineData("12345678901234567890", true)]
    [InlineData("123456789012345678901", false)]
    [InlineData("1", false)]
    [InlineData("", false)]
    [InlineData("911 or 112", false)]
    [InlineData("١١٢", false)]
    public void The_emergency_number_can_be_dialled(string number, bool fits) => Refused.Unless(fits, (Good with { EmergencyNumber = number }).Check(), "practice-emergency", "EmergencyNumber");

    [Theory]
    [InlineData("", true)]
    [InlineData("office@example.org", true)]
    [InlineData("office", false)]
    public void Mail_comes_from_an_address_or_from_none(string address, bool fits) => Refused.Unless(fits, (Good with { MailFrom = address }).Check(), "practice-mail-from", "MailFrom");

    [Theory]
    [InlineData("https://lessons.example.org", true)]
    [InlineData("https://lessons.example.org/", true)]
    [InlineData("http://192.168.1.20:5180", true)]
    [InlineData("", false)]
    [InlineData("lessons.example.org", false)]
    [InlineData("ftp://lessons.example.org", false)]
    [InlineData("https://lessons.example.org/office", false)]
    [InlineData("https://lessons.example.org/?", false)]
    [InlineData("https://lessons.example.org/?a=b", false)]
    [InlineData("https://lessons.example.org/#", false)]
    [InlineData("https://lessons.example.org/#top", false)]
    [InlineData("https://mara@lessons.example.org", false)]
    public void Links_are_written_behind_an_address_without_anything_behind_it(string address, bool fits) =>
        Refused.Unless(fits, (Good with { PublicAddress = address }).Check(), "practice-address", "PublicAddress");

    [Fact]
    public void Everything_that_is_wrong_is_said_at_once() =>
        Assert.Equal(
            ["practice-name", "practice-zone", "practice-currency", "practice-emergency", "practice-mail-from", "practice-address"],
            new PracticeDetails { Name = "", Zone = "", Currency = "", EmergencyNumber = "", MailFrom = "x", PublicAddress = "" }.Check().Select(r => r.Code));
}
