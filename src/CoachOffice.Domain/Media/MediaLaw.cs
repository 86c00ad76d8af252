using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Media;

/// <summary>Who may be kept in pictures: grown-ups unless they object, minors once their guardian consented (own judgement; local law comes first).</summary>
public static class MediaLaw
{
    /// <summary>What holds on a day.</summary>
    /// <param name="student">Who is to be seen.</param>
    /// <param name="last">The consent recorded last, or null.</param>
    /// <param name="today">The practice's day.</param>
    public static MediaPermission On(Student student, MediaConsent? last, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(student);
        if (last is not null) return last.WithdrawnAt is null ? MediaPermission.Given : MediaPermission.Withdrawn;
        return student.BirthDate is { } born && Ages.IsMinor(born, today) ? MediaPermission.Missing : MediaPermission.Given;
    }
}
