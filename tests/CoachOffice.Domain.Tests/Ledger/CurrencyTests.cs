using CoachOffice.Domain.Ledger;

namespace CoachOffice.Domain.Tests.Ledger;

/// <summary>ISO 4217 list one (from memory). The forint has two decimals there, whatever culture data says.</summary>
public sealed class CurrencyTests
{
    [Theory]
    [InlineData(0, "JPY KRW VND CLP ISK PYG UGX XAF XOF XPF")]
    [InlineData(2, "USD EUR GBP CHF AUD HUF MRU MGA")]
    [InlineData(3, "BHD KWD JOD OMR TND IQD LYD")]
    [InlineData(4, "CLF UYW")]
    public void Decimals_are_those_of_the_standard(int decimals, string codes) =>
        Assert.All(codes.Split(' '), code => Assert.Equal(decimals, Currency.Of(code).Decimals));

    [Theory]
    [InlineData("JPY", 1)]
    [InlineData("EUR", 100)]
    [InlineData("BHD", 1000)]
    [InlineData("CLF", 10000)]
    public void A_whole_has_as_many_units(string code, long units) => Assert.Equal(units, Currency.Of(code).MinorPerWhole);

    [Theory]
    [InlineData("eur")]
    [InlineData("XYZ")]
    [InlineData("")]
    [InlineData(null)]
    public void What_is_not_in_the_list_is_none(string? code) => Assert.Null(Currency.Find(code));

    [Fact]
    public void An_unknown_code_is_a_defect() => Assert.Throws<ArgumentException>(() => Currency.Of("EURO"));
}
