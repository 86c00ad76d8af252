using System.Globalization;
using CoachOffice.Domain;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using NodaTime.Text;

namespace CoachOffice.UseCases.Students;

/// <summary>A student field by field, as text, so that two versions can be laid side by side.</summary>
internal static class StudentFields
{
    public static IEnumerable<Difference> Compare(Student kept, Student yours) =>
        Of(kept).Zip(Of(yours), (a, b) => new Difference(a.Field, a.Label, a.Text, b.Text));

    private static IEnumerable<(string Field, string Label, string Text)> Of(Student s) =>
    [
        (nameof(s.GivenName), "Given name", s.GivenName),
        (nameof(s.FamilyName), "Family name", s.FamilyName),
        (nameof(s.Email), "Mail", s.Email),
        (nameof(s.Phone), "Phone", s.Phone),
        (nameof(s.BirthDate), "Birth date", s.BirthDate is { } born ? LocalDatePattern.Iso.Format(born) : ""),
        (nameof(s.Guardian), "Guardian", s.Guardian is { } g ? Join([g.Name, g.Email, g.Phone, g.Relation]) : ""),
        (nameof(s.Hand), "Hand", Terms.Of(s.Hand)),
        (nameof(s.Level), "Level", Terms.Of(s.Level)),
        (nameof(s.Goals), "Goals", Join(s.Goals.Select(goal => Terms.Of(goal)))),
        (nameof(s.Kit), "Kit", Join(s.Kit.Select(thing => Terms.Of(thing)))),
        (nameof(s.Room), "Room", Terms.Of(s.Room)),
        (nameof(s.MinutesPerWeek), "Minutes a week", s.MinutesPerWeek.ToString(CultureInfo.InvariantCulture)),
        (nameof(s.DaysPerWeek), "Days a week", s.DaysPerWeek.ToString(CultureInfo.InvariantCulture)),
        (nameof(s.Limits), "Limits", Join(s.Limits.Select(l => $"{Terms.Of(l.Region)} {Terms.Of(l.Status)} ({LocalDatePattern.Iso.Format(l.NotedOn)}, {l.Source})"))),
        ("ClubSpeedGoal", "Club-speed goal", Number(s.ClubSpeedGoalMetresPerSecond, "m/s")),
        ("Height", "Height", Number(s.HeightCm, "cm")),
        (nameof(s.Notes), "Notes", s.Notes),
    ];

    private static string Join(IEnumerable<string> words) => string.Join(", ", words.Where(w => w.Length > 0));

    private static string Number(double? value, string unit) =>
        value is { } number ? string.Create(CultureInfo.InvariantCulture, $"{number:0.##} {unit}") : "";
}
