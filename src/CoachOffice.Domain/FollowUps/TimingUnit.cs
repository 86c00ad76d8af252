namespace CoachOffice.Domain.FollowUps;

/// <summary>What the number of a kind's timing counts.</summary>
public enum TimingUnit
{
    /// <summary>Written by a deed and due with it: there is nothing to set.</summary>
    None,

    /// <summary>Hours before the lesson begins.</summary>
    HoursBefore,

    /// <summary>Hours after the promise passed.</summary>
    HoursAfter,

    /// <summary>Days before the last day.</summary>
    DaysBefore,

    /// <summary>Days after the day it was to be paid.</summary>
    DaysAfter,

    /// <summary>Days from one to the next.</summary>
    DaysBetween,

    /// <summary>The hour of the day.</summary>
    HourOfDay,
}
