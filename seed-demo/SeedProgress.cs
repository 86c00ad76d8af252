namespace CoachOffice.SeedDemo;

/// <summary>How far the demo practice is.</summary>
/// <param name="Done">Steps done.</param>
/// <param name="Of">Steps in all.</param>
/// <param name="Doing">What is being done, for a person.</param>
public sealed record SeedProgress(int Done, int Of, string Doing)
{
    /// <summary>Whole percent, 0 to 100.</summary>
    public int Percent => Of <= 0 ? 0 : Math.Clamp(100 * Done / Of, 0, 100);
}
