using CoachOffice.Domain;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Ledger;

/// <summary>What people type about money, before it is written where nothing can be changed.</summary>
internal static class MoneyEntry
{
    /// <summary>An amount above zero.</summary>
    public static Outcome<Money> Positive(string? text, Currency currency, string field)
    {
        if (!MoneyText.Parse(text, currency).TryGet(out var money)) return MoneyText.Parse(text, currency).Refusals[0] with { Field = field };
        return money.MinorUnits > 0 ? money : new Refusal("money-positive", "Write an amount above zero.", field);
    }

    /// <summary>Words that go into the books: one line, no card's number.</summary>
    public static IEnumerable<Refusal> CheckWords(string text, int most, string field)
    {
        if (text.Length > most) yield return new("money-words-long", $"Write at most {most} characters.", field);
        if (!OneLine.Fits(text) || text != StudentSearch.Whole(text)) yield return new("money-words-line", OneLine.Wanted, field);
        if (CardNumbers.LooksLikeOne(text))
            yield return new("card-number", "This looks like the number of a payment card. Card data never belongs here: write the number on the terminal's slip, or its last six characters.", field);
    }
}
