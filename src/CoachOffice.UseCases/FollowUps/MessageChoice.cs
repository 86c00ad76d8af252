using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Which messages of a list, beside where they stand.</summary>
/// <param name="Kind">Only these; null: every kind.</param>
/// <param name="Student">Only about this student; null: everybody.</param>
/// <param name="Day">Due or sent on this day of the practice; null: whenever.</param>
public sealed record MessageChoice(MessageKind? Kind, StudentId? Student, LocalDate? Day)
{
    /// <summary>All of them.</summary>
    public static MessageChoice Everything { get; } = new(null, null, null);

    /// <summary>Something is left out.</summary>
    public bool IsNarrow => Kind is not null || Student is not null || Day is not null;
}
