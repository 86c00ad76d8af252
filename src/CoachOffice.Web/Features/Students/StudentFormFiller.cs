using System.Globalization;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using NodaTime.Text;

namespace CoachOffice.Web.Features.Students;

/// <summary>Fills the form from a saved student.</summary>
internal static class StudentFormFiller
{
    public static StudentForm From(Student student, bool imperial) => new()
    {
        Id = student.Id.Value,
        Version = student.Version,
        Imperial = imperial,
        GivenName = student.GivenName,
        FamilyName = student.FamilyName,
        Email = student.Email,
        Phone = student.Phone,
        BirthDate = student.BirthDate is { } born ? LocalDatePattern.Iso.Format(born) : null,
        Guardian = GuardianOf(student.Guardian),
        Hand = Terms.Of(student.Hand),
        Level = Terms.Of(student.Level),
        Room = Terms.Of(student.Room),
        Goals = [.. student.Goals.Select(g => Terms.Of(g))],
        Kit = [.. student.Kit.Select(k => Terms.Of(k))],
        MinutesPerWeek = student.MinutesPerWeek.ToString(CultureInfo.InvariantCulture),
        DaysPerWeek = student.DaysPerWeek.ToString(CultureInfo.InvariantCulture),
        Limits = [.. student.Limits.Select(LimitOf)],
        ClubSpeedGoal = Amount(student.ClubSpeedGoalMetresPerSecond, Unit.MetrePerSecond, imperial ? Unit.MilePerHour : Unit.MetrePerSecond),
        Height = Amount(student.HeightCm, Unit.Centimetre, imperial ? Unit.Inch : Unit.Centimetre),
        Notes = student.Notes,
    };

    private static GuardianFields GuardianOf(Guardian? guardian) =>
        guardian is null ? new() : new() { Name = guardian.Name, Email = guardian.Email, Phone = guardian.Phone, Relation = guardian.Relation };

    private static LimitFields LimitOf(StudentLimit limit) => new()
    {
        Region = Terms.Of(limit.Region),
        Status = Terms.Of(limit.Status),
        NotedOn = LocalDatePattern.Iso.Format(limit.NotedOn),
        Source = limit.Source,
    };

    private static string? Amount(double? value, Unit stored, Unit shown) =>
        value is { } number ? new Quantity(number, stored).In(shown).Value.ToString("0.##", CultureInfo.InvariantCulture) : null;
}
