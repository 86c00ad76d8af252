using CoachOffice.Domain.Students;

namespace CoachOffice.Domain.Tests.Students;

public sealed class MailAddressTests
{
    [Theory]
    [InlineData("a@b.c", true)]
    [InlineData("mara.feld+lessons@mail.example.org", true)]
    [InlineData("mära@exämple.org", true)]
    [InlineData("", false)]
    [InlineData("mara.example.org", false)]
    [InlineData("@example.org", false)]
    [InlineData("mara@", false)]
    [InlineData("mara@example", false)]
    [InlineData("mara.feld@example", false)]
    [InlineData("mara@.org", false)]
    [InlineData("mara@example.", false)]
    [InlineData("mara@example.org.", false)]
    [InlineData("mara@feld@example.org", false)]
    [InlineData("mara feld@example.org", false)]
    [InlineData("mara@example.org\n", false)]
    [InlineData("mara\u0007@example.org", false)]
    [InlineData("<mara@example.org>", false)]
    [InlineData("mara@example.org>", false)]
    [InlineData("mara@example.org,ida@example", false)]
    [InlineData("mara@example.org;ida", false)]
    [InlineData("\"mara\"@example.org", false)]
    public void One_at_with_something_before_it_and_a_dot_behind(string address, bool right) => Assert.Equal(right, MailAddress.LooksRight(address));

    [Theory]
    [InlineData(254, true)]
    [InlineData(255, false)]
    public void Up_to_254_characters(int length, bool right) => Assert.Equal(right, MailAddress.LooksRight(new string('m', length - 12) + "@example.org"));
}
