namespace CoachOffice.UseCases.Bookings;

/// <summary>How many rows stand behind some days of the calendar, and how often they were saved.</summary>
public sealed record CalendarSaves
{
    /// <summary>Bookings of those days, whatever became of them.</summary>
    public required int Bookings { get; init; }

    /// <summary>Saves of all of them together, their seats included.</summary>
    public required int OfBookings { get; init; }

    public required int Seats { get; init; }

    /// <summary>Saves of the students in these seats.</summary>
    public required int OfStudents { get; init; }

    /// <summary>Saves of all offerings, places and bays.</summary>
    public required int OfChoices { get; init; }

    /// <summary>Closed times in those days, and the latest of them to be written.</summary>
    public required int Closed { get; init; }

    public required string? LastClosed { get; init; }

    /// <summary>Busy times in those days, and the latest of them to be written.</summary>
    public required int Busy { get; init; }

    public required string? LastBusy { get; init; }
}
