using CoachOffice.Domain.Access;
using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>Hours at which a coach teaches at a place every week, in the practice's local time.</summary>
public sealed class WeeklyHours
{
    private WeeklyHours()
    {
    }

    public Guid Id { get; private set; }

    public AccountId CoachId { get; private set; }

    public PlaceId PlaceId { get; private set; }

    public IsoDayOfWeek Day { get; private set; }

    public LocalTime From { get; private set; }

    /// <summary>Exclusive; midnight means the end of the day.</summary>
    public LocalTime Until { get; private set; }

    /// <summary>First day it holds.</summary>
    public LocalDate ValidFrom { get; private set; }

    /// <summary>Last day it holds, or null.</summary>
    public LocalDate? ValidUntil { get; private set; }

    /// <summary>New hours.</summary>
    public static WeeklyHours Of(Guid id, AccountId coach, PlaceId place, DayHours hours, LocalDate validFrom, LocalDate? validUntil)
    {
        ArgumentNullException.ThrowIfNull(hours);
        return new WeeklyHours { Id = id, CoachId = coach, PlaceId = place, Day = hours.Day, From = hours.From, Until = hours.Until, ValidFrom = validFrom, ValidUntil = validUntil };
    }

    /// <summary>They end with that day, or go on when there is none.</summary>
    public void EndAfter(LocalDate? lastDay) => ValidUntil = lastDay;

    /// <summary>True on days of its weekday within its validity.</summary>
    public bool HoldsOn(LocalDate day) => day.DayOfWeek == Day && day >= ValidFrom && (ValidUntil is not { } last || day <= last);
}
