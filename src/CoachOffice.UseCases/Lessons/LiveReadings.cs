using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans.Drafts;

namespace CoachOffice.UseCases.Lessons;

/// <summary>What the office knows of readings while they are typed; nothing of it is kept.</summary>
public sealed record LiveReadings
{
    /// <summary>Nobody asked for anything.</summary>
    public static LiveReadings None { get; } = new();

    /// <summary>By row of the measure, derived ones too.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>Swings that stand apart from the others of their measure.</summary>
    public IReadOnlyDictionary<MeasureId, IReadOnlyList<ApartSwing>> Apart { get; init; } = new Dictionary<MeasureId, IReadOnlyList<ApartSwing>>();

    /// <summary>What to read next, most telling first.</summary>
    public IReadOnlyList<DraftMeasureNext> Next { get; init; } = [];
}
