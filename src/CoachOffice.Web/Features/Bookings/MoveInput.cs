using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Bookings;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.Web.Features.Bookings;

/// <summary>Where a booking was dropped, and where it was, for the way back.</summary>
public sealed class MoveInput
{
    private static readonly LocalDateTimePattern Written = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm");

    public string? Start { get; set; }

    public int? Minutes { get; set; }

    public Guid? ToCoach { get; set; }

    public string? WasStart { get; set; }

    public int? WasMinutes { get; set; }

    public Guid? WasCoach { get; set; }

    internal static string Text(LocalDateTime time) => Written.Format(time);

    internal static LocalDateTime? Read(string? text) => Written.Parse(text ?? "") is { Success: true } read ? read.Value : null;

    internal MoveForm Form() => new() { Start = Read(Start), Minutes = Minutes, CoachId = ToCoach is { } coach && coach != Guid.Empty ? AccountId.From(coach) : null };

    /// <summary>The query of the way back, or null when nobody said where it was.</summary>
    internal string? Back() => Read(WasStart) is { } was ? $"start={Text(was)}&minutes={WasMinutes}&toCoach={WasCoach}" : null;

    internal string Said() => Read(Start) is { } start ? $"Moved to {start.ToString("ddd d MMM, HH:mm", System.Globalization.CultureInfo.InvariantCulture)}, {Minutes} minutes." : "Moved.";
}
