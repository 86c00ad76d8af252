using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>The edition in force with all that a change of it needs.</summary>
/// <param name="Row">The row a new edition is set in, as it was read.</param>
/// <param name="Edition">The edition.</param>
/// <param name="Loaded">The edition's book, read.</param>
/// <param name="Bases">Shipped books to build on, best first: one that waits because the own changes do not fit it, then the edition's.</param>
public sealed record StandingBook(BookInForce Row, RulebookEdition Edition, LoadedRulebook Loaded, IReadOnlyList<ShippedBase> Bases);
