using CoachOffice.Domain.Ledger;

namespace CoachOffice.UseCases.Ledger.Reports;

/// <summary>What was earned in a year, without tax.</summary>
/// <param name="Year">Which.</param>
/// <param name="Years">Years with entries.</param>
/// <param name="Months">One row for each month with entries.</param>
/// <param name="Offerings">By offering, most first.</param>
/// <param name="Coaches">By coach, most first.</param>
/// <param name="Total">All months together.</param>
public sealed record EarnedView(int Year, IReadOnlyList<int> Years, IReadOnlyList<MonthRow> Months, IReadOnlyList<(string Name, Money Earned)> Offerings, IReadOnlyList<(string Name, Money Earned)> Coaches, MonthRow Total);

/// <summary>A month's sums.</summary>
/// <param name="Month">1 to 12; 0 for the whole year.</param>
/// <param name="Earned">Without tax.</param>
/// <param name="Tax">Charged.</param>
/// <param name="Sold">Packages sold less what was earned from them, without tax: how much more is owed in lessons.</param>
/// <param name="Came">Money that came, less what went back.</param>
/// <param name="GivenUp">Written off.</param>
public sealed record MonthRow(int Month, Money Earned, Money Tax, Money Sold, Money Came, Money GivenUp);
