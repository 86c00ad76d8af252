using CoachOffice.Domain.Ledger;

namespace CoachOffice.UseCases.Ledger.Packages;

/// <summary>A package as listed.</summary>
/// <param name="Package">Which.</param>
/// <param name="StudentName">For whom it was bought.</param>
/// <param name="Credits">How it stands.</param>
/// <param name="EndsSoon">True when lessons are left and its last day is near.</param>
public sealed record PackageRow(Package Package, string StudentName, PackageCredits Credits, bool EndsSoon)
{
    /// <summary>True while lessons may be taken from it.</summary>
    public bool IsOpen => Package.ClosedAt is null && !Credits.IsEnded && Credits.Left > 0;
}
