using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;

namespace CoachOffice.Web.Shell.Wording;

/// <summary>The closed word lists of measuring, said to a person.</summary>
internal static class MeasureWords
{
    public static string Of(View view) => view switch
    {
        View.FaceOn => "Face-on",
        View.DownTheLine => "Down the line",
        View.Either => "Either view",
        _ => "Ball, strike and devices",
    };

    public static string Of(Moment moment) => moment switch
    {
        Moment.Address => "At address",
        Moment.Takeaway => "Takeaway",
        Moment.Top => "At the top",
        Moment.EarlyDownswing => "First move down",
        Moment.LeadArmParallel => "Lead arm level, coming down",
        Moment.ShaftParallel => "Shaft level, coming down",
        Moment.Impact => "At impact",
        _ => "After impact",
    };

    public static string Of(Instrument instrument) => instrument switch
    {
        Instrument.Video => "video",
        Instrument.Radar => "radar",
        Instrument.PressureMat => "pressure mat",
        Instrument.FaceTape => "face tape",
        Instrument.TapeMeasure => "tape measure",
        Instrument.Sensor => "sensor",
        _ => "by eye",
    };

    public static string Of(Club club) => Sentence(Terms.Of(club));

    public static string Of(Movement movement) => movement switch
    {
        Movement.MovedToward => "Moved toward",
        Movement.MovedAway => "Moved away",
        Movement.MovedThrough => "Moved through",
        Movement.NoChangeBeyondReadingError => "No change beyond reading error",
        _ => "Cannot tell yet",
    };

    public static string Of(Standing standing) => standing == Standing.InRange ? "in range" : "not yet in range";

    public static string Of(RetestStatus status) => status switch
    {
        RetestStatus.Ready => "due",
        RetestStatus.InProgress => "begun",
        RetestStatus.Completed => "judged",
        RetestStatus.Failed => "not done",
        _ => "called off",
    };

    /// <summary>"Spine tilt at impact, low".</summary>
    public static string Of(FaultId fault, Domain.Plans.Rulebook book) =>
        $"{NameOf(fault.Measure, book)}, {Terms.Of(fault.Side)}";

    public static string NameOf(MeasureId measure, Domain.Plans.Rulebook book) => book.Find(measure)?.Name ?? Sentence(measure.Value);

    /// <summary>The first letter large, the rest as it is.</summary>
    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>"lower-back" becomes "Lower back".</summary>
    public static string Sentence(string word) =>
        word.Length == 0 ? word : char.ToUpperInvariant(word[0]) + word[1..].Replace('-', ' ');
}
