using CoachOffice.Domain.Access;

namespace CoachOffice.UseCases.Access;

/// <summary>One page of the audit trail.</summary>
public sealed record AuditPage(IReadOnlyList<AuditEntry> Entries, int Page, bool HasMore);
