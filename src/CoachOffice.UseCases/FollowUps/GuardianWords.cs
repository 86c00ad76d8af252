namespace CoachOffice.UseCases.FollowUps;

/// <summary>What a guardian may say to a person of the practice: that they withdraw, and that they agree again.</summary>
public sealed class GuardianWords(WithdrawGuardian withdraws, LetGuardianBack returns)
{
    /// <summary>They withdraw.</summary>
    public WithdrawGuardian Withdraws => withdraws;

    /// <summary>They agree again.</summary>
    public LetGuardianBack Returns => returns;
}
