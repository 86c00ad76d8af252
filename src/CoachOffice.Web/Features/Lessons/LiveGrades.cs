using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Lessons;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Lessons;

/// <summary>Grades of what stands in the fields now, and what is wrong with them, by measure.</summary>
internal sealed record LiveGrades(LiveReadings Live, IReadOnlyDictionary<string, Finding> Findings, IReadOnlyDictionary<string, string> Wrong, UnitText Units)
{
    /// <summary>What to read next, by name, with its reason.</summary>
    public required IReadOnlyList<NextMeasure> Next { get; init; }
}
