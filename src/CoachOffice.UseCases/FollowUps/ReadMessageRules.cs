using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>What the practice decided about its kinds of messages; the usual where nobody decided. Read once for a piece of work.</summary>
public sealed class ReadMessageRules(OfficeDb db)
{
    private IReadOnlyDictionary<MessageKind, MessageRule>? _rules;

    /// <summary>Of one kind.</summary>
    public async Task<MessageRule> Of(MessageKind kind, CancellationToken stop = default) => (_rules ?? await Again(stop))[kind];

    /// <summary>Of every kind, in the order of the list.</summary>
    public async Task<IReadOnlyDictionary<MessageKind, MessageRule>> All(CancellationToken stop = default) => _rules ?? await Again(stop);

    /// <summary>As they are at this moment, whatever was read before.</summary>
    public async Task<IReadOnlyDictionary<MessageKind, MessageRule>> Again(CancellationToken stop = default)
    {
        var kept = await db.MessageRules.AsNoTracking().ToDictionaryAsync(r => r.Kind, stop);
        return _rules = Enum.GetValues<MessageKind>().ToDictionary(k => k, k => kept.GetValueOrDefault(k) ?? MessageRule.Usual(Guid.Empty, k));
    }

    /// <summary>The words each message goes out in: its own, its kind's, or null for the shipped ones.</summary>
    public async Task<IReadOnlyDictionary<Guid, LetterWords?>> WordsOf(IReadOnlyList<Message> messages, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(messages);
        var rules = await All(stop);
        var ids = rules.Values.Select(r => r.WordingId).OfType<Guid>().ToList();
        var wordings = ids.Count == 0 ? [] : await db.MessageWordings.AsNoTracking().Where(w => ids.Contains(w.Id)).ToDictionaryAsync(w => w.Id, w => w.Words, stop);
        return messages.ToDictionary(m => m.Id, m => m.OwnWords is { } own ? LetterWords.Of(own) : rules[m.Kind].WordingId is { } id ? wordings[id] : null);
    }
}
