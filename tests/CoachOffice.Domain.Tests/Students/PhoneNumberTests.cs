using CoachOffice.Domain.Students;

namespace CoachOffice.Domain.Tests.Students;

/// <summary>ITU-T E.164 (from memory): country code and number, fifteen digits at most. Numbers are from ranges kept for fiction (Ofcom 01632 960, NANP 555-01xx).</summary>
public sealed class PhoneNumberTests
{
    [Theory]
    [InlineData("+44 1632 960001", "+441632960001")]
    [InlineData("+1 (202) 555-0101", "+12025550101")]
    [InlineData("0044 1632 960 001", "+441632960001")]
    [InlineData("+123456789012345", "+123456789012345")]
    public void With_its_countrys_code_it_is_taken_without_what_stands_between_the_digits(string typed, string number) => Assert.Equal(number, PhoneNumber.E164(typed));

    [Theory]
    [InlineData("01632 960001")]
    [InlineData("+0 1632 960001")]
    [InlineData("+1234567890123456")]
    [InlineData("+44 1632")]
    [InlineData("+44 1632 96000a")]
    [InlineData("+44+1632960001")]
    [InlineData("")]
    [InlineData(null)]
    public void Anything_else_is_none(string? typed) => Assert.Null(PhoneNumber.E164(typed));
}
