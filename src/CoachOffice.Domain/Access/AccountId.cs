using Vogen;

namespace CoachOffice.Domain.Access;

/// <summary>Identity of a person who signs in.</summary>
[ValueObject<Guid>]
public readonly partial struct AccountId;
