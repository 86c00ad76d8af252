using CoachOffice.Domain.Measuring;

namespace CoachOffice.Benchmarks.Engine;

/// <summary>What one test of a pattern looks at.</summary>
internal enum HandTestKind : byte
{
    Out,
    Beyond,
    InRange,
    NotInRange,
    Measured,
    NotMeasured,
    Counted,
    Others,
    SameSide,
    Any,
    Fired,
}

/// <summary>One test of a pattern as numbers: rows of the table of measures instead of names, places in arrays instead of objects.</summary>
internal struct HandTest
{
    public HandTestKind Kind;
    public Side Side;

    /// <summary>Row of the measure, or number of the pattern.</summary>
    public int Row;

    /// <summary>Least weight, least swings, or least others.</summary>
    public int AtLeast;
    public double Bound;

    /// <summary>The branches of an `any` among the tests, or the rows of `same-side` among the rows.</summary>
    public int From;
    public int To;

    /// <summary>True under `unless`, where what nobody read passes.</summary>
    public bool Excludes;
}
