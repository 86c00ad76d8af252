using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Checks.Algebra;

/// <summary>The lessons in one of some boxes and in none of some others. The difference is cut only as far as a question needs it.</summary>
/// <param name="Space">The space it lies in.</param>
/// <param name="Within">In one of these.</param>
/// <param name="Without">In none of these.</param>
internal sealed record Region(Space Space, IReadOnlyList<Box> Within, IReadOnlyList<Box> Without)
{
    /// <summary>A region of boxes.</summary>
    public Region(Space space, IReadOnlyList<Box> within)
        : this(space, within, [])
    {
    }

    public bool IsEmpty => !Pieces().Any();

    /// <summary>The region cut into boxes, as many as are asked for.</summary>
    public IEnumerable<Box> Pieces() => Within.SelectMany(box => Left(box, [.. Without.Where(box.Meets)], 0));

    /// <summary>Every lesson of this one is in the other.</summary>
    public bool IsInside(Region other) => And(other.Without).IsEmpty && (this with { Without = [.. Without, .. other.Within] }).IsEmpty;

    /// <summary>They share a lesson.</summary>
    public bool Meets(Region other) => !And(other).IsEmpty;

    /// <summary>What two regions share.</summary>
    public Region And(Region other) => And(other.Within) with { Without = [.. Without, .. other.Without] };

    /// <summary>The fault is there by more than reading error in every lesson of the region.</summary>
    public bool AlwaysOut(FaultId fault)
    {
        var cells = Space.Of(fault.Measure);
        return (this with { Within = [.. Within.Select(box => box.And(fault.Measure, cells.All & ~cells.Out(fault.Side))).OfType<Box>()] }).IsEmpty;
    }

    /// <summary>The part of the region in which a fault is there.</summary>
    public Region Out(FaultId fault)
    {
        var beyond = Space.Of(fault.Measure).Out(fault.Side);
        return this with { Within = [.. Within.Select(box => box.And(fault.Measure, beyond)).OfType<Box>()] };
    }

    private Region And(IReadOnlyList<Box> boxes) => this with { Within = [.. Within.SelectMany(_ => boxes, (one, two) => one.And(two)).OfType<Box>()] };

    // Deep before wide: mostly the first piece left over already answers the question.
    private static IEnumerable<Box> Left(Box box, List<Box> without, int from)
    {
        if (without.Exists(box.IsInside)) yield break;
        for (var i = from; i < without.Count; i++)
        {
            if (!box.Meets(without[i]) || without[i].Others > box.Others) continue;
            foreach (var piece in box.Minus(without[i]).SelectMany(piece => Left(piece, without, i + 1))) yield return piece;
            yield break;
        }

        yield return box;
    }
}
