using System.Globalization;
using CoachOffice.Domain.Lessons.Imports;
using NodaTime;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>Reads a cell that should hold a day, perhaps with a time behind it, which is not used.</summary>
internal static class DayCell
{
    private const int MostMonths = 12;

    /// <summary>The day; null when there is none in the cell, or when it needs an order it was not given.</summary>
    public static LocalDate? Read(string cell, DayOrder? order)
    {
        if (Parts(cell) is not { } p) return null;
        if (p.YearFirst) return Day(p.A, p.B, p.C);
        if (p.Mark == '.') return Day(p.C, p.B, p.A);
        return order switch
        {
            DayOrder.DayFirst => Day(p.C, p.B, p.A),
            DayOrder.MonthFirst => Day(p.C, p.A, p.B),
            _ => null,
        };
    }

    /// <summary>What a cell shows of the order: DayFirst or MonthFirst when only one is possible; false when it is no such day at all.</summary>
    public static bool NeedsOrder(string cell, out DayOrder? shown)
    {
        shown = null;
        if (Parts(cell) is not { YearFirst: false, Mark: not '.' } p) return false;
        if (p.A > MostMonths && p.B <= MostMonths) shown = DayOrder.DayFirst;
        else if (p.B > MostMonths && p.A <= MostMonths) shown = DayOrder.MonthFirst;
        return true;
    }

    private static (int A, int B, int C, char Mark, bool YearFirst)? Parts(string cell)
    {
        var end = cell.AsSpan().IndexOfAny(' ', 'T');
        var day = end < 0 ? cell : cell[..end];
        var at = day.AsSpan().IndexOfAny('-', '/', '.');
        if (at < 1 || day.Length > 10) return null;
        var parts = day.Split(day[at]);
        if (parts.Length != 3 || !Number(parts[0], out var a) || !Number(parts[1], out var b) || !Number(parts[2], out var c)) return null;
        return (a, b, parts[0].Length == 4 || parts[2].Length != 2 ? c : c + 2000, day[at], parts[0].Length == 4);
    }

    private static bool Number(string text, out int number) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number);

    private static LocalDate? Day(int year, int month, int day) =>
        year is > 1900 and < 2200 && month is >= 1 and <= MostMonths && day >= 1 && day <= CalendarSystem.Iso.GetDaysInMonth(year, month) ? new LocalDate(year, month, day) : null;
}
