using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;

namespace CoachOffice.UseCases.Ledger;

/// <summary>An entry somebody wants to write.</summary>
/// <param name="Id">Made when the form was shown: the same form sent twice is one entry.</param>
/// <param name="Payer">Whose.</param>
/// <param name="Actor">Who.</param>
/// <param name="Action">For the audit row, e.g. <c>payment-taken</c>.</param>
public sealed record MoneyDeed(EntryId Id, PayerId Payer, Actor Actor, string Action);
