using CoachOffice.Domain;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Plans;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Plans.Private;

/// <summary>The check-in as posted, everything as typed.</summary>
public sealed class CheckInInput
{
    public Guid Id { get; set; }

    public string? On { get; set; }

    public string? Minutes { get; set; }

    /// <summary>Percent of the repetitions.</summary>
    public string? Share { get; set; }

    public bool Reached { get; set; }

    /// <summary>"yes" or "no".</summary>
    public string? Pain { get; set; }

    public string? Where { get; set; }

    public string[] Signs { get; set; } = [];

    public string? Comment { get; set; }

    internal Outcome<CheckInForm> ToForm()
    {
        var signs = Signs.Select(s => Terms.TryParse<EmergencySign>(s, out var sign) ? sign : (EmergencySign?)null).OfType<EmergencySign>().ToList();
        // A sign of an emergency counts, whatever else was left out.
        if (signs.Count > 0) return Form(signs, pain: true);
        var refusals = new List<Refusal>();
        if (Pain is not ("yes" or "no")) refusals.Add(new("pain-not-said", "Say whether anything hurt.", nameof(Pain)));
        if (DayEntry.Read(On) is null) refusals.Add(DayEntry.Refusal(nameof(On)));
        if (Pain != "yes" && Number(Minutes) is null) refusals.Add(new("minutes-wrong", "Write the minutes as a number, such as 20.", nameof(Minutes)));
        return refusals.Count > 0 ? Outcome<CheckInForm>.Refused(refusals) : Form(signs, Pain == "yes");
    }

    private CheckInForm Form(List<EmergencySign> signs, bool pain) => new()
    {
        Id = Id,
        PracticedOn = DayEntry.Read(On),
        Minutes = Number(Minutes),
        RepetitionsPercent = Number(Share),
        CountReached = Reached,
        Pain = pain,
        PainRegion = Terms.TryParse<Region>(Where, out var region) ? region : null,
        Signs = signs,
        Comment = Comment ?? "",
    };

    private static int? Number(string? text) =>
        NumberEntry.One(text).TryGet(out var number) && number is >= 0 and <= 1440 ? (int)Math.Round(number) : null;
}
