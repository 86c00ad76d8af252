using CoachOffice.Domain;

namespace CoachOffice.UseCases.Ledger.Packages;

/// <summary>Refusals several operations share.</summary>
internal static class PackageRefusals
{
    public static Refusal NotFound { get; } = new("package-not-found", "There is no such package.");

    public static Refusal Busy { get; } = new("changed-meanwhile", "Someone else changed this package at the same moment; look at it again, then repeat it.");
}
