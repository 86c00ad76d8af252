using CoachOffice.Domain.Measuring;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Lessons;

/// <summary>Grades of what stands in the fields now, and what is wrong with them, by measure.</summary>
internal sealed record LiveGrades(IReadOnlyDictionary<string, Finding> Findings, IReadOnlyDictionary<string, string> Wrong, UnitText Units);
