namespace CoachOffice.Domain.Plans;

/// <summary>How a stage is dosed.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="RepsPerMinute">Repetitions a minute.</param>
/// <param name="MostRepsPerSession">Ceiling of repetitions in a session.</param>
/// <param name="ShortestDays">Shortest length of the stage, days.</param>
/// <param name="LongestDays">Longest usual length of the stage, days.</param>
public sealed record StageDosage(Stage Stage, double RepsPerMinute, int MostRepsPerSession, int ShortestDays, int LongestDays);
