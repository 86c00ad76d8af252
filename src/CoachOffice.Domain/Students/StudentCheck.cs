using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.Domain.Students;

/// <summary>What must hold of a student's details before they are saved.</summary>
public static class StudentCheck
{
    /// <summary>Everything that is wrong, each with its field and what would be right.</summary>
    /// <param name="details">As entered.</param>
    /// <param name="today">The practice's day.</param>
    public static IReadOnlyList<Refusal> Of(StudentDetails details, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(details);
        return [.. Texts(details), .. Identity(details, today), .. Guardianship(details, today), .. Week(details), .. Body(details, today)];
    }

    private static IEnumerable<Refusal> Texts(StudentDetails d)
    {
        if (d.Phone.Length > 40) yield return new("student-phone", "A phone number may have up to 40 characters.", nameof(d.Phone));
        if (d.Notes.Length > 20_000) yield return new("student-notes", "Notes may have up to 20,000 characters.", nameof(d.Notes));
        var g = d.Guardian;
        if (g is not null && (g.Name.Length > 120 || g.Phone.Length > 40 || g.Relation.Length > 60))
            yield return new("guardian-long", "The guardian's name may have up to 120 characters, the phone 40, the relation 60.", "Guardian.Name");
        if (d.Limits.Any(l => l.Source.Length > 200)) yield return new("limit-source-long", "Who told of a limit may have up to 200 characters.", nameof(d.Limits));
        string[] all = [d.GivenName, d.FamilyName, d.Phone, d.Notes, g?.Name ?? "", g?.Phone ?? "", g?.Relation ?? "", .. d.Limits.Select(l => l.Source)];
        if (all.Any(text => text.Contains('\0') || text != StudentSearch.Whole(text)))
            yield return new("student-text", "A text holds a character that cannot be kept; type it again instead of pasting it.", nameof(d.GivenName));
    }

    private static IEnumerable<Refusal> Identity(StudentDetails d, LocalDate today)
    {
        if (!OneLine.Shows(d.GivenName)) yield return new("student-name", "Give the student a name.", nameof(d.GivenName));
        (string Field, string Text)[] lines = [(nameof(d.GivenName), d.GivenName), (nameof(d.FamilyName), d.FamilyName), (nameof(d.Phone), d.Phone), ("Guardian.Name", d.Guardian?.Name ?? "")];
        foreach (var (field, text) in lines)
            if (!text.Contains('\0') && !OneLine.Fits(text)) yield return new("student-line", OneLine.Wanted, field);
        if (d.GivenName.Length > 120 || d.FamilyName.Length > 120) yield return new("student-name-long", "A name may have up to 120 characters.", nameof(d.GivenName));
        if (d.Email.Length > 0 && !MailAddress.LooksRight(d.Email)) yield return new("student-mail", $"'{d.Email}' is no mail address; write it like name@example.org.", nameof(d.Email));
        if (d.BirthDate is { } born && (born > today || born < today.PlusYears(-110)))
            yield return new("student-birth-date", "The birth date lies in the future or more than 110 years back; write it as year-month-day.", nameof(d.BirthDate));
    }

    private static IEnumerable<Refusal> Guardianship(StudentDetails d, LocalDate today)
    {
        var minor = d.BirthDate is { } born && Ages.IsMinor(born, today);
        if (minor && d.Guardian is null)
            yield return new("guardian-needed", "A student under 18 needs a guardian: give the guardian's name and mail address, messages go there.", "Guardian.Name");
        if (d.Guardian is { } g && !MailAddress.LooksRight(g.Email))
            yield return new("guardian-mail", "Give the guardian's mail address, like name@example.org.", "Guardian.Email");
    }

    private static IEnumerable<Refusal> Week(StudentDetails d)
    {
        if (d.MinutesPerWeek is < 0 or > 2400) yield return new("student-minutes", "Minutes a week lie between 0 and 2400.", nameof(d.MinutesPerWeek));
        if (d.DaysPerWeek is < 0 or > 7) yield return new("student-days", "Days a week lie between 0 and 7.", nameof(d.DaysPerWeek));
        if (d.Goals.Distinct().Count() != d.Goals.Count) yield return new("student-goals", "Name each goal once, the most important first.", nameof(d.Goals));
        if (d.ClubSpeedGoal is { } goal && goal.In(Unit.MetrePerSecond).Value is < 8 or > 70)
            yield return new("student-speed-goal", "The club-speed goal lies between 8 and 70 m/s (18 and 157 mph).", nameof(d.ClubSpeedGoal));
    }

    private static IEnumerable<Refusal> Body(StudentDetails d, LocalDate today)
    {
        if (d.Height is { } height && height.In(Unit.Centimetre).Value is < 80 or > 230)
            yield return new("student-height", "Height lies between 80 and 230 cm.", nameof(d.Height));
        if (d.Limits.Any(l => l.NotedOn > today)) yield return new("limit-date", "A limit is noted today or earlier.", nameof(d.Limits));
        if (d.Limits.GroupBy(l => l.Region).Any(g => g.Count() > 1)) yield return new("limit-twice", "Name each region once.", nameof(d.Limits));
    }
}
