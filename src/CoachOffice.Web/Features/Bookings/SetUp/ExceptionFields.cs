using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Bookings.SetUp;
using CoachOffice.Web.Shell.Wording;
using NodaTime;

namespace CoachOffice.Web.Features.Bookings.SetUp;

/// <summary>A closed or opened time as typed.</summary>
public sealed class ExceptionFields
{
    /// <summary>True for the whole practice.</summary>
    public bool IsPractice { get; set; }

    /// <summary>Where the coach teaches then; empty: closed.</summary>
    public Guid? OpenAt { get; set; }

    public string? FromDay { get; set; }

    /// <summary>Empty: from the beginning of the day.</summary>
    public string? FromTime { get; set; }

    /// <summary>Empty: the same day.</summary>
    public string? UntilDay { get; set; }

    /// <summary>Empty: to the end of the day.</summary>
    public string? UntilTime { get; set; }

    public string? Note { get; set; }

    internal static ExceptionFields Of(ExceptionForm form) => new()
    {
        IsPractice = form.CoachId is null,
        OpenAt = form.OpenAt?.Value,
        FromDay = DayEntry.Text(form.From.Date),
        FromTime = TimeEntry.Text(form.From.TimeOfDay),
        UntilDay = DayEntry.Text(form.Until.Date),
        UntilTime = TimeEntry.Text(form.Until.TimeOfDay),
        Note = form.Note,
    };

    internal Outcome<ExceptionForm> Read(AccountId coach)
    {
        if (DayEntry.Read(FromDay) is not { } first) return DayEntry.Refusal(nameof(FromDay));
        if (!string.IsNullOrWhiteSpace(UntilDay) && DayEntry.Read(UntilDay) is null) return DayEntry.Refusal(nameof(UntilDay));
        if (!string.IsNullOrWhiteSpace(FromTime) && TimeEntry.Read(FromTime) is null) return TimeEntry.Refusal(nameof(FromTime));
        if (!string.IsNullOrWhiteSpace(UntilTime) && TimeEntry.Read(UntilTime) is null) return TimeEntry.Refusal(nameof(UntilTime));
        var last = DayEntry.Read(UntilDay) ?? first;
        return new ExceptionForm
        {
            CoachId = IsPractice ? null : coach,
            OpenAt = OpenAt is { } place ? PlaceId.From(place) : null,
            From = first + (TimeEntry.Read(FromTime) ?? LocalTime.Midnight),
            Until = TimeEntry.Read(UntilTime) is { } until ? last + until : last.PlusDays(1).AtMidnight(),
            Note = Note ?? "",
        };
    }
}
