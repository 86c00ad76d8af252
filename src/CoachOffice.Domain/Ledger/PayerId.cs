using Vogen;

namespace CoachOffice.Domain.Ledger;

/// <summary>Identity of a payer.</summary>
[ValueObject<Guid>]
public readonly partial struct PayerId;
