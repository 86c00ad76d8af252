using System.Numerics;
using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Checks.Algebra;

/// <summary>A set of lessons: for each measure of the book the cells it may lie in, by the measure's place in the space.</summary>
internal sealed class Box
{
    private readonly BigInteger[] _sides;

    private Box(Space space, BigInteger[] sides, int others)
    {
        Space = space;
        Others = others;
        _sides = sides;
        NamedCount = Named.Count();
    }

    /// <summary>The space it lies in.</summary>
    public Space Space { get; }

    /// <summary>How many measures besides must be in range; no cells can say which.</summary>
    public int Others { get; }

    /// <summary>How many measures it says something of.</summary>
    public int NamedCount { get; }

    /// <summary>The places of the measures it says something of.</summary>
    public IEnumerable<int> Named => Enumerable.Range(0, _sides.Length).Where(i => _sides[i] != Space.At(i).All);

    /// <summary>All lessons of a space in which so many measures besides are in range.</summary>
    public static Box Everything(Space space, int others = 0) => new(space, [.. Enumerable.Range(0, space.Count).Select(i => space.At(i).All)], others);

    /// <summary>The cells the measure at a place may lie in.</summary>
    public BigInteger Side(int place) => _sides[place];

    /// <summary>The cells a measure may lie in.</summary>
    public BigInteger Side(MeasureId measure) => _sides[Space.PlaceOf(measure)];

    /// <summary>The part in which a measure lies in these cells; null when there is none.</summary>
    public Box? And(MeasureId measure, BigInteger cells) => And(Space.PlaceOf(measure), cells);

    /// <summary>The part two boxes share; null when there is none.</summary>
    public Box? And(Box other)
    {
        if (!Meets(other)) return null;
        var both = new BigInteger[_sides.Length];
        for (var i = 0; i < both.Length; i++) both[i] = _sides[i] & other._sides[i];
        return new Box(Space, both, Math.Max(Others, other.Others));
    }

    /// <summary>They share a lesson.</summary>
    public bool Meets(Box other)
    {
        for (var i = 0; i < _sides.Length; i++)
        {
            if ((_sides[i] & other._sides[i]).IsZero) return false;
        }

        return true;
    }

    /// <summary>Every lesson of this one is in the other.</summary>
    public bool IsInside(Box other)
    {
        if (other.Others > Others || other.NamedCount > NamedCount) return false;
        for (var i = 0; i < _sides.Length; i++)
        {
            if ((_sides[i] & other._sides[i]) != _sides[i]) return false;
        }

        return true;
    }

    /// <summary>What is left without another box, in boxes that do not meet. One that asks for other measures in range takes nothing away unless this asks for as many.</summary>
    public IReadOnlyList<Box> Minus(Box other)
    {
        if (other.Others > Others || !Meets(other)) return [this];
        List<Box> left = [];
        var rest = this;
        for (var i = 0; i < _sides.Length; i++)
        {
            if (rest.And(i, Space.At(i).All & ~other._sides[i]) is not { } outside) continue;
            left.Add(outside);
            rest = rest.And(i, other._sides[i])!;
        }

        return left;
    }

    private Box? And(int place, BigInteger cells)
    {
        var both = _sides[place] & cells;
        if (both.IsZero) return null;
        if (both == _sides[place]) return this;
        BigInteger[] sides = [.. _sides];
        sides[place] = both;
        return new Box(Space, sides, Others);
    }
}
