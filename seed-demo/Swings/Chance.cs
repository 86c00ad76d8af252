namespace CoachOffice.SeedDemo.Swings;

/// <summary>Chance from a seed: the same row at every run.</summary>
internal sealed class Chance(int seed)
{
    private readonly Random _random = new(seed);

    /// <summary>True so often, 0 to 1.</summary>
    public bool Is(double share) => _random.NextDouble() < share;

    /// <summary>A whole number, both ends included.</summary>
    public int Between(int low, int high) => _random.Next(low, high + 1);

    /// <summary>One of several.</summary>
    public T Of<T>(IReadOnlyList<T> several) => several[_random.Next(several.Count)];

    /// <summary>Evenly between two numbers.</summary>
    public double Within(double low, double high) => low + ((high - low) * _random.NextDouble());

    /// <summary>A draw from the normal distribution around zero (Box and Muller 1958).</summary>
    public double Around(double standardDeviation)
    {
        var (first, second) = (1 - _random.NextDouble(), _random.NextDouble());
        return standardDeviation * Math.Sqrt(-2 * Math.Log(first)) * Math.Cos(2 * Math.PI * second);
    }
}
