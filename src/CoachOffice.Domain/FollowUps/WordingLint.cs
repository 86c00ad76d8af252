using System.Text.RegularExpressions;

namespace CoachOffice.Domain.FollowUps;

/// <summary>
/// Whether words leave the reader free: a reason and a choice, no pressure, no guilt, no comparison, no chains of days. The rules follow the techniques
/// that support autonomy and competence in Teixeira et al. (2020), A classification of motivation and behavior change techniques used in
/// self-determination theory-based interventions in health contexts, Motivation Science 6(4), 438-455, doi 10.1037/mot0000172 (abstract read, the list
/// from memory); which words stand for them is our own judgement.
/// </summary>
public static partial class WordingLint
{
    private static readonly (WordingRule Rule, Regex Words)[] Never =
    [
        (WordingRule.Pressure, Pressing()),
        (WordingRule.Urgency, Urging()),
        (WordingRule.Guilt, Blaming()),
        (WordingRule.Comparison, Comparing()),
        (WordingRule.Health, Curing()),
    ];

    /// <summary>Every fault of a template's own words, whatever branch they stand in, and of what it reads like to each reader.</summary>
    /// <param name="written">The words of the template without its marks.</param>
    /// <param name="read">The letter as readers get it, one text for each.</param>
    /// <param name="purpose">What the kind is for; only encouragement needs a reason and a choice.</param>
    public static IReadOnlyList<WordingFault> Of(string written, IReadOnlyList<WordingReader> read, MessagePurpose purpose)
    {
        ArgumentNullException.ThrowIfNull(written);
        ArgumentNullException.ThrowIfNull(read);
        var faults = Found(written, purpose).ToList();
        if (purpose == MessagePurpose.Encouragement)
        {
            faults.AddRange(read.Where(r => !Reasons().IsMatch(r.Text)).Take(1).Select(_ => new WordingFault(WordingRule.NoReason, "")));
            faults.AddRange(read.Where(r => !Choices().IsMatch(r.Text)).Take(1).Select(_ => new WordingFault(WordingRule.NoChoice, "")));
        }

        foreach (var reader in read.Where(r => r.ForGuardian)) faults.AddRange(Matches(Pushing(), reader.Text).Select(word => new WordingFault(WordingRule.Minor, word)));
        return [.. faults.Distinct()];
    }

    private static IEnumerable<WordingFault> Found(string text, MessagePurpose purpose)
    {
        foreach (var (rule, words) in Never)
        {
            foreach (var word in Matches(words, text)) yield return new WordingFault(rule, word);
        }

        if (purpose != MessagePurpose.Encouragement) yield break;
        foreach (var word in Matches(Chains(), text)) yield return new WordingFault(WordingRule.Chain, word);
    }

    private static IEnumerable<string> Matches(Regex words, string text) => words.Matches(text).Select(m => m.Value.ToLowerInvariant()).Distinct(StringComparer.Ordinal);

    [GeneratedRegex(@"\b(must|mustn't|should|shouldn't|ought|have to|has to|had to|got to|gotta|need to|needs to|supposed to|expected to|obliged|obligation|make sure|be sure to|remember to|don't forget|do not forget|never forget|no excuses?)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Pressing();

    [GeneratedRegex(@"\b(hurry|act now|right away|last chance|only today|before it is too late|before it's too late|final notice|final warning|don't miss|do not miss|running out)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Urging();

    [GeneratedRegex(@"\b(disappoint\w*|let (me|us|you|yourself) down|asham\w*|guilt\w*|lazy|laziness|neglect\w*|slack\w*|fail(ed|ing|ure)?|you missed|missed again|fall(en|ing)? behind|behind schedule|still haven't|still have not|why haven't|excuse)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Blaming();

    [GeneratedRegex(@"\b(other students|other players|other golfers|most students|everyone else|everybody else|than others|than the others|better than|worse than|best student|leaderboard|ranking|ranked|top \d+|average student|compared (to|with))\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Comparing();

    [GeneratedRegex(@"\b(cures?|cured|heals?|healed|diagnos\w*|pain[- ]free|(treats?|fixes|relieves?) (your |the )?(pain|back|knee|hip|shoulder|wrist|elbow|neck))\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Curing();

    [GeneratedRegex(@"\b(streaks?|in a row|days straight|day \d+ of|don't break|do not break|keep it going|badges?|points|level up|lose your)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Chains();

    [GeneratedRegex(@"\b(push|motivate|reward|praise|encourage|nag|insist|supervise)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Pushing();

    [GeneratedRegex(@"\b(because|reasons?|so that|that is why|that's why|which is why|since|only then|tends? to|helps?|lets)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Reasons();

    [GeneratedRegex(@"\b(your choice|choice|choose|could|may|might|can be|if you like|if you want|if it suits|would rather|whether|up to you|one way|or not)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Choices();
}
