using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Lessons;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Lessons;

/// <summary>A page that holds fields of the lesson sheet.</summary>
internal interface ISheetPage
{
    UnitText Units { get; }

    IReadOnlyList<Refusal> Refusals { get; }

    /// <summary>True after a clash: what someone else saved stands beside what was typed here.</summary>
    bool Clashes { get; }

    /// <summary>Swings of the field that stand apart from the others.</summary>
    IReadOnlyList<ApartSwing> ApartOf(SheetRow row);

    /// <summary>What is known of the value that stands in the field; null when nothing is.</summary>
    Finding? FindingOf(SheetRow row);
}
