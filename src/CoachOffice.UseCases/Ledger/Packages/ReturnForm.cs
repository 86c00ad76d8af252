using CoachOffice.Domain.Ledger;

namespace CoachOffice.UseCases.Ledger.Packages;

/// <summary>Which package is given back.</summary>
/// <param name="Id">Of the entry; made when the form was shown.</param>
/// <param name="Package">Which.</param>
public sealed record ReturnForm(EntryId Id, PackageId Package);
