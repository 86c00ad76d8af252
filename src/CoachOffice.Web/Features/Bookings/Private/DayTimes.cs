using CoachOffice.Domain.Bookings;
using NodaTime;

namespace CoachOffice.Web.Features.Bookings.Private;

/// <summary>Free times to pick from, day by day.</summary>
/// <param name="Page">The page they stand on.</param>
/// <param name="Times">All that were found.</param>
/// <param name="Day">The day whose times are shown.</param>
/// <param name="From">First day looked at.</param>
/// <param name="Until">Last day looked at.</param>
internal sealed record DayTimes(LessonsPage Page, IReadOnlyList<FreeTime> Times, LocalDate? Day, LocalDate From, LocalDate Until)
{
    /// <summary>Address a day's link leads to, without the day.</summary>
    public required string Address { get; init; }

    /// <summary>Names of coaches; empty when there is only one to pick.</summary>
    public IReadOnlyDictionary<Guid, string> Coaches { get; init; } = new Dictionary<Guid, string>();

    /// <summary>Names of places; empty when there is only one.</summary>
    public IReadOnlyDictionary<PlaceId, string> Places { get; init; } = new Dictionary<PlaceId, string>();

    public IEnumerable<IGrouping<LocalDate, FreeTime>> Days => Times.GroupBy(t => t.LocalStart.Date);

    /// <summary>With whom and where, as far as there is a choice.</summary>
    public string About(FreeTime time)
    {
        ArgumentNullException.ThrowIfNull(time);
        var coach = Coaches.Count > 1 ? $"with {Coaches.GetValueOrDefault(time.Coach.Value)}" : "";
        var place = Places.Count > 1 ? Places.GetValueOrDefault(time.Place) ?? "" : "";
        return string.Join(", ", new[] { coach, place }.Where(w => w.Length > 0));
    }
}
