using CoachOffice.Domain;

namespace CoachOffice.UseCases.Plans;

/// <summary>A reason a coach gives in words.</summary>
internal static class Reasons
{
    private const int Longest = 500;

    /// <summary>What is wrong with it, or null.</summary>
    public static Refusal? Check(string? reason) =>
        string.IsNullOrWhiteSpace(reason) || reason.Length > Longest ? new("reason-needed", "Give a reason of up to 500 characters.", "Reason") : null;
}
