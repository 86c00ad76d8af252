namespace CoachOffice.Benchmarks.Pages;

/// <summary>One page under load.</summary>
internal sealed record PageLoad(string Name, Func<Task<int>> Request)
{
    /// <summary>Size of the answer.</summary>
    public int Bytes { get; set; }

    /// <summary>Requests a second, one a round.</summary>
    public List<double> Rates { get; } = [];
}
