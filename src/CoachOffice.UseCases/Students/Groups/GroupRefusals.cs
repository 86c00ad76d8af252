using CoachOffice.Domain;
using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Students.Groups;

/// <summary>Refusals several operations share.</summary>
internal static class GroupRefusals
{
    public static Refusal NotFound { get; } = new("group-not-found", "There is no such group; the link may be old.");

    public static Refusal Busy { get; } = new(Clash.Code, "Someone else changed this group at the same moment; look again and repeat it.");
}
