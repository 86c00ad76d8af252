namespace CoachOffice.Domain.Ledger;

/// <summary>What becomes of a fraction of the smallest unit. Laws differ: Australia half up, New Zealand lets a half be disregarded (half down), many set nothing.</summary>
public enum Rounding
{
    /// <summary>To the nearest; a half away from zero.</summary>
    HalfUp,

    /// <summary>To the nearest; a half to the even neighbour, so that many halves cancel out.</summary>
    HalfEven,

    /// <summary>To the nearest; a half toward zero.</summary>
    HalfDown,

    /// <summary>Away from zero.</summary>
    Up,

    /// <summary>Toward zero.</summary>
    Down,

    /// <summary>Toward more.</summary>
    Ceiling,

    /// <summary>Toward less.</summary>
    Floor,
}
