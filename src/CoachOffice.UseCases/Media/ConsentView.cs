using CoachOffice.Domain.Media;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.UseCases.Media;

/// <summary>What is recorded of consent to stills and clips of a student.</summary>
public sealed record ConsentView
{
    public required Student Student { get; init; }

    public required bool IsMinor { get; init; }

    public required MediaPermission Permission { get; init; }

    /// <summary>Newest first.</summary>
    public required IReadOnlyList<ConsentRow> Consents { get; init; }

    /// <summary>Lessons that hold a still or clip of the student, newest first, with how many.</summary>
    public required IReadOnlyList<LessonMedia> Lessons { get; init; }
}

/// <summary>One consent, with the names of those who wrote it down.</summary>
public sealed record ConsentRow(MediaConsent Consent, string RecordedBy, string? WithdrawnBy);

/// <summary>How many stills and clips a lesson has.</summary>
public sealed record LessonMedia(Domain.Lessons.LessonId Lesson, LocalDate HeldOn, int Count);
