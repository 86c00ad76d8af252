namespace CoachOffice.SeedDemo.Swings;

/// <summary>What practice does to a swing. Invented; no claim about people.</summary>
internal enum Response
{
    /// <summary>Toward the range and into it.</summary>
    Improves,

    /// <summary>Faster than most.</summary>
    ImprovesQuickly,

    /// <summary>A little.</summary>
    ImprovesSlowly,

    /// <summary>Nothing to speak of.</summary>
    Stays,

    /// <summary>Further out.</summary>
    Worsens,

    /// <summary>Past the far edge.</summary>
    GoesThrough,
}
