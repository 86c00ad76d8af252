using System.Numerics;
using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Checks.Algebra;

/// <summary>A set of lessons: for some measures of the book the cells they may lie in, by the measure's place in the space; all others may lie anywhere. A box names a handful of some seventy measures, so only those are held.</summary>
internal sealed class Box
{
    private readonly int[] _places;
    private readonly BigInteger[] _sides;

    private Box(Space space, int[] places, BigInteger[] sides, int others)
    {
        Space = space;
        Others = others;
        _places = places;
        _sides = sides;
    }

    /// <summary>The space it lies in.</summary>
    public Space Space { get; }

    /// <summary>How many measures besides must be in range; no cells can say which.</summary>
    public int Others { get; }

    /// <summary>How many measures it says something of.</summary>
    public int NamedCount => _places.Length;

    /// <summary>The places of the measures it says something of, in their order.</summary>
    public IReadOnlyList<int> Named => _places;

    /// <summary>All lessons of a space in which so many measures besides are in range.</summary>
    public static Box Everything(Space space, int others = 0) => new(space, [], [], others);

    /// <summary>The cells the measure at a place may lie in.</summary>
    public BigInteger Side(int place) => Array.BinarySearch(_places, place) is >= 0 and var at ? _sides[at] : Space.At(place).All;

    /// <summary>The cells a measure may lie in.</summary>
    public BigInteger Side(MeasureId measure) => Side(Space.PlaceOf(measure));

    /// <summary>The part in which a measure lies in these cells; null when there is none.</summary>
    public Box? And(MeasureId measure, BigInteger cells) => And(Space.PlaceOf(measure), cells);

    /// <summary>The part two boxes share; null when there is none.</summary>
    public Box? And(Box other)
    {
        if (!Meets(other)) return null;
        var (places, sides) = (new List<int>(NamedCount + other.NamedCount), new List<BigInteger>(NamedCount + other.NamedCount));
        for (int i = 0, j = 0; i < _places.Length || j < other._places.Length;)
        {
            var place = Math.Min(i < _places.Length ? _places[i] : int.MaxValue, j < other._places.Length ? other._places[j] : int.MaxValue);
            var mine = i < _places.Length && _places[i] == place;
            var its = j < other._places.Length && other._places[j] == place;
            places.Add(place);
            sides.Add(mine && its ? _sides[i] & other._sides[j] : mine ? _sides[i] : other._sides[j]);
            if (mine) i++;
            if (its) j++;
        }

        return new Box(Space, [.. places], [.. sides], Math.Max(Others, other.Others));
    }

    /// <summary>They share a lesson.</summary>
    public bool Meets(Box other)
    {
        for (int i = 0, j = 0; i < _places.Length && j < other._places.Length;)
        {
            if (_places[i] < other._places[j]) i++;
            else if (_places[i] > other._places[j]) j++;
            else if ((_sides[i++] & other._sides[j++]).IsZero) return false;
        }

        return true;
    }

    /// <summary>Every lesson of this one is in the other.</summary>
    public bool IsInside(Box other)
    {
        if (other.Others > Others || other.NamedCount > NamedCount) return false;
        var i = 0;
        for (var j = 0; j < other._places.Length; j++)
        {
            while (i < _places.Length && _places[i] < other._places[j]) i++;
            if (i == _places.Length || _places[i] != other._places[j] || (_sides[i] & other._sides[j]) != _sides[i]) return false;
        }

        return true;
    }

    /// <summary>What is left without another box, in boxes that do not meet. One that asks for other measures in range takes nothing away unless this asks for as many.</summary>
    public IReadOnlyList<Box> Minus(Box other)
    {
        if (other.Others > Others || !Meets(other)) return [this];
        List<Box> left = [];
        var rest = this;
        for (var j = 0; j < other._places.Length; j++)
        {
            var place = other._places[j];
            if (rest.And(place, Space.At(place).All & ~other._sides[j]) is not { } outside) continue;
            left.Add(outside);
            rest = rest.And(place, other._sides[j])!;
        }

        return left;
    }

    private Box? And(int place, BigInteger cells)
    {
        var side = Side(place);
        var both = side & cells;
        if (both.IsZero) return null;
        if (both == side) return this;
        var at = Array.BinarySearch(_places, place);
        if (at < 0) return new Box(Space, [.. _places[..~at], place, .. _places[~at..]], [.. _sides[..~at], both, .. _sides[~at..]], Others);
        BigInteger[] sides = [.. _sides];
        sides[at] = both;
        return new Box(Space, _places, sides, Others);
    }
}
