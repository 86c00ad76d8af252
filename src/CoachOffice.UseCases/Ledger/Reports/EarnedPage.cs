using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Ledger.Reports;

/// <summary>What was earned, by month, by offering and by coach.</summary>
public sealed class EarnedPage(OfficeDb db, LedgerBook book, PracticeClock clock)
{
    private const string Rest = "Not from a lesson";

    /// <summary>Of a year; this one when none is named.</summary>
    public async Task<Outcome<EarnedView>> Of(int? year, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepBooks) return NotAllowed.To("see what was earned");
        var wanted = year is >= 2000 and <= 2200 ? year.Value : (await clock.Today(stop)).Year;
        var sums = await Sums(wanted, stop);
        var currency = await book.Currency(stop);
        var days = await db.LedgerEntries.Select(e => e.On).Distinct().ToListAsync(stop);
        var earned = sums.Where(s => s.Account == LedgerAccount.Revenue).ToList();
        return new EarnedView(
            wanted,
            [.. days.Select(d => d.Year).Append(wanted).Distinct().OrderDescending()],
            [.. sums.GroupBy(s => s.On.Month).OrderBy(m => m.Key).Select(m => Row(m.Key, m, currency))],
            By(earned, await Offerings(stop), s => s.OfferingId, currency),
            By(earned, await Coaches(stop), s => s.CoachId, currency),
            Row(0, sums, currency));
    }

    private Task<List<DaySum>> Sums(int year, CancellationToken stop)
    {
        var (first, last) = (new LocalDate(year, 1, 1), new LocalDate(year, 12, 31));
        return (from entry in db.LedgerEntries
                where entry.On >= first && entry.On <= last
                from posting in entry.Postings
                group posting.AmountMinor by new { entry.On, entry.OfferingId, entry.CoachId, posting.Account } into g
                select new DaySum(g.Key.On, g.Key.OfferingId, g.Key.CoachId, g.Key.Account, g.Sum())).ToListAsync(stop);
    }

    private static MonthRow Row(int month, IEnumerable<DaySum> sums, Currency currency)
    {
        var all = sums.ToLookup(s => s.Account, s => s.Minor);
        Money On(params LedgerAccount[] accounts) => new(accounts.Sum(a => all[a].Sum()), currency);
        return new MonthRow(
            month, -On(LedgerAccount.Revenue), -On(LedgerAccount.Tax), -On(LedgerAccount.Prepaid), On(LedgerAccount.Cash, LedgerAccount.CardTerminal, LedgerAccount.Transfer), On(LedgerAccount.WriteOff));
    }

    private static IReadOnlyList<(string Name, Money Earned)> By<TKey>(IEnumerable<DaySum> earned, Dictionary<TKey, string> names, Func<DaySum, TKey?> key, Currency currency)
        where TKey : struct =>
        [
            .. earned.GroupBy(s => key(s) is { } id ? names.GetValueOrDefault(id, Rest) : Rest)
                .Select(g => (Name: g.Key, Earned: new Money(-g.Sum(s => s.Minor), currency))).Where(g => !g.Earned.IsZero)
                .OrderByDescending(g => g.Earned.MinorUnits).ThenBy(g => g.Name, StringComparer.Ordinal),
        ];

    private Task<Dictionary<OfferingId, string>> Offerings(CancellationToken stop) => db.Offerings.ToDictionaryAsync(o => o.Id, o => o.Name, stop);

    private async Task<Dictionary<AccountId, string>> Coaches(CancellationToken stop) =>
        (await db.Users.Select(u => new { u.Id, u.DisplayName }).ToListAsync(stop)).ToDictionary(u => AccountId.From(u.Id), u => u.DisplayName);

    private sealed record DaySum(LocalDate On, OfferingId? OfferingId, AccountId? CoachId, LedgerAccount Account, long Minor);
}
