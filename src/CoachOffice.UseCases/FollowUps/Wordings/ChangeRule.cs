using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps.Wordings;

/// <summary>Saves whether a kind of message goes, when, by itself or after a coach's yes, and in which words. What waits already follows the new rule.</summary>
public sealed class ChangeRule(OfficeDb db, RuleDoor door, CheckWording check, RetimeMessages retime)
{
    /// <summary>Whether, when, and by itself or not.</summary>
    public async Task<Outcome<int>> To(MessageKind kind, int version, MessageRuleDetails details, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(details);
        if (details.Check(kind) is { Count: > 0 } wrong) return Outcome<int>.Refused(wrong);
        return await door.Change(new RuleDeed(kind, version, actor, "message-rule-changed"), rule => Follow(rule, details, stop), stop);
    }

    /// <summary>Other words from now on.</summary>
    public async Task<Outcome<int>> Words(MessageKind kind, int version, LetterWords words, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(words);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("change how messages read");
        var clean = LetterWords.Of(words.AsTemplate);
        if (check.Of(kind, words with { Body = clean.Body }) is { Count: > 0 } wrong) return Outcome<int>.Refused(wrong);
        return await door.Change(
            new RuleDeed(kind, version, actor, "message-words-changed"),
            rule =>
            {
                var wording = MessageWording.Of(door.NewId(), kind, clean, actor.Name, door.Now);
                db.MessageWordings.Add(wording);
                rule.Use(wording);
                return Task.CompletedTask;
            },
            stop);
    }

    /// <summary>Back to the shipped words; the own ones stay to be read.</summary>
    public Task<Outcome<int>> ShippedWords(MessageKind kind, int version, Actor actor, CancellationToken stop = default) =>
        door.Change(
            new RuleDeed(kind, version, actor, "message-words-shipped"),
            rule =>
            {
                rule.Use(null);
                return Task.CompletedTask;
            },
            stop);

    private async Task Follow(MessageRule rule, MessageRuleDetails details, CancellationToken stop)
    {
        var (timing, waited) = (rule.Timing, rule.WaitsForCoach);
        rule.Change(details);
        if (!rule.IsOn) await retime.TurnOff(rule.Kind, stop);
        else if (waited != rule.WaitsForCoach) await retime.Wait(rule.Kind, rule.WaitsForCoach, stop);
        if (rule.IsOn && timing != rule.Timing) await retime.Retime(rule, stop);
    }
}
