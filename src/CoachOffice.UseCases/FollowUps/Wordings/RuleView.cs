using CoachOffice.Domain.FollowUps;

namespace CoachOffice.UseCases.FollowUps.Wordings;

/// <summary>One kind of message as the practice has decided about it.</summary>
/// <param name="Rule">The decisions; the usual ones with version 0 until somebody decides.</param>
/// <param name="Words">The words in force.</param>
/// <param name="IsOwn">They are the practice's own.</param>
public sealed record RuleView(MessageRule Rule, LetterWords Words, bool IsOwn)
{
    /// <summary>What is fixed about the kind.</summary>
    public MessageTraits Traits => MessageTraits.Of(Rule.Kind);

    /// <summary>Earlier own words, newest first.</summary>
    public IReadOnlyList<MessageWording> Earlier { get; init; } = [];
}
