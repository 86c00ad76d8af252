using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Lessons.Reviews;

/// <summary>What a student says with their clips.</summary>
public sealed record ReviewWords
{
    public const int Longest = 2000;

    public required Club Club { get; init; }

    /// <summary>Where the ball went, in the student's words.</summary>
    public string BallFlight { get; init; } = "";

    /// <summary>What the student felt.</summary>
    public string Felt { get; init; } = "";

    /// <summary>Numbers of a launch monitor, if any, as typed.</summary>
    public string Numbers { get; init; } = "";

    /// <summary>Everything that is wrong, each with the field and what would be right.</summary>
    public IReadOnlyList<Refusal> Check() => [.. TooLong(BallFlight, nameof(BallFlight)), .. TooLong(Felt, nameof(Felt)), .. TooLong(Numbers, nameof(Numbers))];

    private static IEnumerable<Refusal> TooLong(string text, string field)
    {
        if (text.Length > Longest) yield return new("review-text", $"Write at most {Longest} characters.", field);
    }
}
