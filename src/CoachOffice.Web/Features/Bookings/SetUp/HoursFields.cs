using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Bookings.SetUp;
using CoachOffice.Web.Shell.Wording;
using NodaTime;

namespace CoachOffice.Web.Features.Bookings.SetUp;

/// <summary>Weekly hours as typed.</summary>
public sealed class HoursFields
{
    /// <summary>ISO numbers of weekdays: Monday is 1.</summary>
    public List<int> Days { get; set; } = [];

    public string? From { get; set; }

    public string? Until { get; set; }

    public Guid PlaceId { get; set; }

    public string? ValidFrom { get; set; }

    public string? ValidUntil { get; set; }

    internal static HoursFields Of(HoursForm form) => new()
    {
        Days = [.. form.Days.Select(d => (int)d)],
        From = TimeEntry.Text(form.From),
        Until = TimeEntry.Text(form.Until),
        PlaceId = form.PlaceId.Value,
        ValidFrom = DayEntry.Text(form.ValidFrom),
        ValidUntil = form.ValidUntil is { } last ? DayEntry.Text(last) : null,
    };

    internal Outcome<HoursForm> Read(AccountId coach)
    {
        if (TimeEntry.Read(From) is not { } from) return TimeEntry.Refusal(nameof(From));
        if (TimeEntry.Read(Until) is not { } until) return TimeEntry.Refusal(nameof(Until));
        if (DayEntry.Read(ValidFrom) is not { } first) return DayEntry.Refusal(nameof(ValidFrom));
        if (!string.IsNullOrWhiteSpace(ValidUntil) && DayEntry.Read(ValidUntil) is null) return DayEntry.Refusal(nameof(ValidUntil));
        return new HoursForm
        {
            CoachId = coach,
            PlaceId = Domain.Bookings.PlaceId.From(PlaceId),
            Days = [.. Days.Where(d => d is >= 1 and <= 7).Select(d => (IsoDayOfWeek)d)],
            From = from,
            Until = until,
            ValidFrom = first,
            ValidUntil = DayEntry.Read(ValidUntil),
        };
    }
}
