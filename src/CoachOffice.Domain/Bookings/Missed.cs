namespace CoachOffice.Domain.Bookings;

/// <summary>How many of some lessons were missed, with the score interval of Wilson (1927) as in Newcombe (1998), Stat Med 17:857-872, method 3.</summary>
/// <param name="Count">Lessons to which the student did not come.</param>
/// <param name="Of">All lessons that were marked, those that were kept included.</param>
public sealed record Missed(int Count, int Of)
{
    /// <summary>Below so many nothing is said about a share; own judgement, as for the outcomes of drills.</summary>
    public const int Fewest = 8;

    // The 97.5 % point of the standard normal distribution.
    private const double Z = 1.959963984540054;

    /// <summary>False while there are too few to tell.</summary>
    public bool IsEnough => Of >= Fewest;

    /// <summary>The share that was missed, 0 to 1; 0 of none.</summary>
    public double Share => Of == 0 ? 0 : (double)Count / Of;

    /// <summary>The share with 95 % confidence, 0 to 1; all of it for none.</summary>
    public (double Low, double High) Interval
    {
        get
        {
            if (Of == 0) return (0, 1);
            var middle = Share + (Z * Z / (2 * Of));
            var half = Z * Math.Sqrt((Share * (1 - Share) / Of) + (Z * Z / (4.0 * Of * Of)));
            var scale = 1 + (Z * Z / Of);
            return (Count == 0 ? 0 : (middle - half) / scale, Count == Of ? 1 : (middle + half) / scale);
        }
    }

    /// <summary>
    /// How many times as often these were missed as others, with the 95 % interval on the logarithm after Katz et al. (1978), Biometrics 34:469-474; null
    /// where there are too few of either, or none was missed.
    /// </summary>
    public RiskRatio? Against(Missed others)
    {
        ArgumentNullException.ThrowIfNull(others);
        if (!IsEnough || !others.IsEnough || Count == 0 || others.Count == 0) return null;
        var ratio = Share / others.Share;
        var spread = Z * Math.Sqrt((1.0 / Count) - (1.0 / Of) + (1.0 / others.Count) - (1.0 / others.Of));
        return new RiskRatio(ratio, ratio * Math.Exp(-spread), ratio * Math.Exp(spread));
    }
}
