using CoachOffice.Domain;

namespace CoachOffice.UseCases.Bookings.SetUp;

internal static class SetUpRefusals
{
    public static Refusal NoPlace { get; } = new("place-not-found", "There is no such place.");

    public static Refusal NoBay { get; } = new("bay-not-found", "There is no such bay or room.");

    public static Refusal NoOffering { get; } = new("offering-not-found", "There is no such offering.");

    public static Refusal NoHours { get; } = new("hours-not-found", "These hours are not there any more.");

    public static Refusal Busy { get; } = new("changed-meanwhile", "Someone else saved this at the same moment; look again and repeat it.");

    /// <summary>A name of one line, and of nothing else in the list.</summary>
    public static Refusal? Name(string name, string what, IEnumerable<string> others)
    {
        if (!OneLine.Shows(name) || name.Trim().Length > 120) return new($"{what}-name", "Give it a name of up to 120 characters.", "Name");
        if (!OneLine.Fits(name)) return new($"{what}-name-line", OneLine.Wanted, "Name");
        return others.Any(o => string.Equals(o, name.Trim(), StringComparison.OrdinalIgnoreCase)) ? new($"{what}-name-taken", $"There is one called '{name.Trim()}'; give this one another name.", "Name") : null;
    }
}
