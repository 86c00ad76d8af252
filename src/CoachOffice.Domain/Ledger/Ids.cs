using Vogen;

namespace CoachOffice.Domain.Ledger;

/// <summary>Identity of a payer.</summary>
[ValueObject<Guid>]
public readonly partial struct PayerId;

/// <summary>Identity of an entry in the ledger.</summary>
[ValueObject<Guid>]
public readonly partial struct EntryId;

/// <summary>Identity of a package on the price list.</summary>
[ValueObject<Guid>]
public readonly partial struct PackageOfferId;

/// <summary>Identity of a package somebody bought.</summary>
[ValueObject<Guid>]
public readonly partial struct PackageId;

/// <summary>Identity of a receipt or statement.</summary>
[ValueObject<Guid>]
public readonly partial struct DocumentId;
