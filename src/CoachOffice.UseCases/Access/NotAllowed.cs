using CoachOffice.Domain;

namespace CoachOffice.UseCases.Access;

/// <summary>The refusal for an actor without the right; the same code everywhere.</summary>
public static class NotAllowed
{
    /// <summary>The code, for tests and pages.</summary>
    public const string Code = "not-allowed";

    /// <summary>E.g. <c>NotAllowed.To("approve plans")</c>.</summary>
    public static Refusal To(string doing) => new(Code, $"Your account may not {doing}. Ask an owner of the practice.");
}
