using CoachOffice.Domain.Ledger;
using CsCheck;

namespace CoachOffice.Domain.Tests.Ledger;

public sealed class MoneyTests
{
    private static readonly Gen<Currency> Currencies = Gen.OneOf(Currency.Of("JPY"), Currency.Of("EUR"), Currency.Of("BHD"), Currency.Of("CLF"));

    [Theory]
    [InlineData("12,50", "EUR", 1250)]
    [InlineData("12.50", "EUR", 1250)]
    [InlineData("12.5", "EUR", 1250)]
    [InlineData("12", "EUR", 1200)]
    [InlineData(" EUR 12,50 ", "EUR", 1250)]
    [InlineData("12,50 EUR", "EUR", 1250)]
    [InlineData("1 250,00", "EUR", 125000)]
    [InlineData("1\u202F250\u00A0000", "JPY", 1250000)]
    [InlineData("\u22120.05", "EUR", -5)]
    [InlineData("1,250", "BHD", 1250)]
    [InlineData("1250", "JPY", 1250)]
    [InlineData("0.0001", "CLF", 1)]
    public void Amounts_are_read_as_people_type_them(string text, string currency, long minor) =>
        Assert.Equal(new Money(minor, Currency.Of(currency)), MoneyText.Parse(text, Currency.Of(currency)).Value);

    [Theory]
    [InlineData("", "EUR", "not-an-amount")]
    [InlineData(null, "EUR", "not-an-amount")]
    [InlineData("twelve", "EUR", "not-an-amount")]
    [InlineData("1,250.00", "EUR", "not-an-amount")]
    [InlineData("12.50 USD", "EUR", "not-an-amount")]
    [InlineData("1 25", "EUR", "not-an-amount")]
    [InlineData(".5", "EUR", "not-an-amount")]
    [InlineData("1e3", "EUR", "not-an-amount")]
    [InlineData("1234567890123", "EUR", "not-an-amount")]
    [InlineData("1,250", "EUR", "money-decimals")]
    [InlineData("12.500", "EUR", "money-decimals")]
    [InlineData("12.5", "JPY", "money-decimals")]
    [InlineData("0.0001", "BHD", "money-decimals")]
    public void What_is_no_amount_is_refused_with_an_example(string? text, string currency, string code)
    {
        var refusal = MoneyText.Parse(text, Currency.Of(currency)).Refusals.Single();

        Assert.Equal(code, refusal.Code);
        Assert.Contains("like ", refusal.Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(123456789, "EUR", "1234567.89", "EUR\u00A01\u202F234\u202F567.89")]
    [InlineData(-5, "EUR", "-0.05", "EUR\u00A0\u22120.05")]
    [InlineData(0, "EUR", "0.00", "EUR\u00A00.00")]
    [InlineData(1250, "JPY", "1250", "JPY\u00A01\u202F250")]
    [InlineData(-1250, "BHD", "-1.250", "BHD\u00A0\u22121.250")]
    [InlineData(1, "CLF", "0.0001", "CLF\u00A00.0001")]
    [InlineData(long.MinValue, "JPY", "-9223372036854775808", "JPY\u00A0\u22129\u202F223\u202F372\u202F036\u202F854\u202F775\u202F808")]
    public void Amounts_are_written_for_programs_and_for_people(long minor, string currency, string amount, string shown)
    {
        var money = new Money(minor, Currency.Of(currency));

        Assert.Equal((amount, shown), (money.Amount, money.ToString()));
    }

    [Fact]
    public void What_is_written_is_read_back() => Gen.Select(Gen.Long[-99_999_999_999, 99_999_999_999], Currencies).Sample((minor, currency) =>
    {
        var money = new Money(minor, currency);
        Assert.Equal(money, MoneyText.Parse(money.Amount, currency).Value);
        Assert.Equal(money, MoneyText.Parse(money.ToString(), currency).Value);
    });

    [Fact]
    public void Two_currencies_never_meet()
    {
        Assert.Throws<InvalidOperationException>(() => new Money(1, Currency.Of("EUR")) + new Money(1, Currency.Of("USD")));
        Assert.Throws<InvalidOperationException>(() => new Money(1, Currency.Of("EUR")) < new Money(1, Currency.Of("USD")));
    }

    [Fact]
    public void A_sum_that_does_not_fit_is_a_defect()
    {
        var most = new Money(long.MaxValue, Currency.Of("EUR"));
        Assert.Throws<OverflowException>(() => most + new Money(1, Currency.Of("EUR")));
        Assert.Throws<OverflowException>(() => -most - new Money(2, Currency.Of("EUR")));
    }

    [Fact]
    public void Sums_and_order_are_those_of_the_units()
    {
        var (one, two) = (new Money(100, Currency.Of("EUR")), new Money(250, Currency.Of("EUR")));

        Assert.Equal(350, Money.Sum([one, two], Currency.Of("EUR")).MinorUnits);
        Assert.Equal(-150, (one - two).MinorUnits);
        Assert.True(one < two && two > one && one <= two && two >= one && !(one >= two) && !(two <= one));
        Assert.Equal(one, Money.Min(two, one));
        Assert.True(Money.Sum([], Currency.Of("EUR")).IsZero);
    }
}
