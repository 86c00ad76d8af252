using System.Globalization;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Insight;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Bookings;

/// <summary>How many lessons were missed, with a reminder and without one.</summary>
[Authorize(Policy = OfficePolicies.Teach)]
public sealed class AttendanceModel(ReadAttendance read) : OfficePage
{
    internal AttendanceView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync()
    {
        var found = await read.Of(Actor);
        if (!found.TryGet(out var view)) return Refuse(found.Refusals);
        View = view;
        return Page();
    }

    internal static string Share(Missed missed) => missed.IsEnough ? Percent(missed.Share) : "too few to tell";

    internal static string Range(Missed missed) => missed.IsEnough ? $"{Percent(missed.Interval.Low)} to {Percent(missed.Interval.High)}" : "";

    internal static string Times(double ratio) => ratio.ToString("0.00", CultureInfo.InvariantCulture);

    private static string Percent(double share) => (share * 100).ToString("0.#", CultureInfo.InvariantCulture) + " %";
}
