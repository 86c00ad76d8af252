using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Why and by whom an edition is wanted.</summary>
/// <param name="Kind">How it came about.</param>
/// <param name="Why">The person's reason.</param>
/// <param name="Actor">Who wants it; null for the program.</param>
public sealed record EditionWish(EditionKind Kind, string Why, Actor? Actor)
{
    /// <summary>The program brings a book of its own.</summary>
    public static EditionWish Shipped { get; } = new(EditionKind.Shipped, "", null);
}
