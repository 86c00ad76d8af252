namespace CoachOffice.Domain.Measuring.Landmarks;

/// <summary>One measure that follows from marks on a still, or on a still and one of an earlier moment.</summary>
public sealed record PictureMeasure
{
    internal PictureMeasure(Func<StillSight, StillSight, double> value, CameraBias camera) => (Value, Camera) = (value, camera);

    /// <summary>Its id in the rulebook.</summary>
    public required MeasureId Id { get; init; }

    public required View View { get; init; }

    public required Moment Moment { get; init; }

    /// <summary>What has to be marked on the still.</summary>
    public required IReadOnlyList<Landmark> Needs { get; init; }

    /// <summary>The earlier moment it is held against, or null.</summary>
    public Moment? Against { get; init; }

    /// <summary>What has to be marked on the still of that moment.</summary>
    public IReadOnlyList<Landmark> NeedsThere { get; init; } = [];

    /// <summary>Unit of its value.</summary>
    public required Unit Unit { get; init; }

    /// <summary>The value, from the still and that of the earlier moment (the still itself when there is none).</summary>
    internal Func<StillSight, StillSight, double> Value { get; }

    /// <summary>What a camera off square does to it.</summary>
    internal CameraBias Camera { get; }

    /// <summary>How far a usual value, near nothing, moves with a camera so many degrees off; null for a ratio.</summary>
    internal double? UsualMove(int offDegrees) => Camera.OfUsual(Unit, offDegrees);
}
