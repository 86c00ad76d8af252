namespace CoachOffice.Domain.Lessons.Imports;

/// <summary>How to read a day such as 03/04/2026; days that begin with the year need no telling.</summary>
public enum DayOrder
{
    DayFirst,
    MonthFirst,
}
