using CoachOffice.Domain;
using CoachOffice.UseCases.Media;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Media;

/// <summary>What points on a still say, in the practice's units; or what is wrong with the points.</summary>
internal sealed record ValuesShown(IReadOnlyList<StillValue> Values, UnitText Units, IReadOnlyList<Refusal> Wrong);
