namespace CoachOffice.SeedDemo.Swings;

/// <summary>A way of swinging with its consequences; the first fault is its root.</summary>
/// <param name="Name">As the rulebook's pattern is called that it was made for.</param>
/// <param name="Faults">Root first.</param>
/// <param name="Also">Numbers a coach reads beside them, in range.</param>
internal sealed record SwingHabit(string Name, IReadOnlyList<SwingFault> Faults, IReadOnlyList<string> Also);
