using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Lessons.Sheets;
using NodaTime;

namespace CoachOffice.UseCases.Lessons;

/// <summary>A lesson with its sheet.</summary>
public sealed record LessonView
{
    public required LessonId Id { get; init; }

    public required int Version { get; init; }

    public required StudentId StudentId { get; init; }

    public required string StudentName { get; init; }

    public required LessonHeading Heading { get; init; }

    public required string Observations { get; init; }

    public required string Notes { get; init; }

    /// <summary>The reading sheet it is shown by; empty when every measure is.</summary>
    public string SheetKey { get; init; } = "";

    /// <summary>The sheets to pick from.</summary>
    public IReadOnlyList<SheetChoice> Sheets { get; init; } = [];

    /// <summary>Its takes by swing, then view.</summary>
    public IReadOnlyList<Take> Takes { get; init; } = [];

    /// <summary>Swings that stand apart from the others of their measure.</summary>
    public IReadOnlyDictionary<MeasureId, IReadOnlyList<ApartSwing>> Apart { get; init; } = new Dictionary<MeasureId, IReadOnlyList<ApartSwing>>();

    /// <summary>The student's dominant hand, which says on which side of a picture the target is.</summary>
    public required Hand Hand { get; init; }

    /// <summary>By view, then moment.</summary>
    public IReadOnlyList<SheetGroup> Sheet { get; init; } = [];

    /// <summary>What stands, graded, by row of the measure.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>Plans drafted from it, newest first.</summary>
    public IReadOnlyList<DraftedPlan> Plans { get; init; } = [];
}

/// <summary>Measures read from one camera view at one moment.</summary>
public sealed record SheetGroup(View View, Moment Moment, IReadOnlyList<SheetField> Fields);

/// <summary>One field of the sheet.</summary>
public sealed record SheetField
{
    public required Measure Measure { get; init; }

    /// <summary>What was typed, in <see cref="Unit"/>; several swings in a row.</summary>
    public required string Text { get; init; }

    /// <summary>Unit of the field: the measure's own, or the practice's.</summary>
    public required Unit Unit { get; init; }

    public required Instrument Instrument { get; init; }

    public double? FrameRate { get; init; }

    public required bool TakesAsRead { get; init; }

    /// <summary>What this student's value with this club is held against, in the measure's unit.</summary>
    public required HeldRange Held { get; init; }

    /// <summary>A child's length is graded no further than borderline until the height is known.</summary>
    public bool NeedsHeight { get; init; }

    /// <summary>The wanted band, in the measure's unit.</summary>
    public Limits? Range => Held.Limits;

    /// <summary>The mean of the last earlier lesson with this club, in <see cref="Unit"/>.</summary>
    public double? LastTime { get; init; }

    public LocalDate? LastOn { get; init; }
}

/// <summary>A plan made from a lesson.</summary>
public sealed record DraftedPlan(Domain.Plans.PlanId Id, Domain.Plans.PlanStatus Status, Instant CreatedAt);
