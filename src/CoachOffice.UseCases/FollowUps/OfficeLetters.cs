using CoachOffice.Domain.FollowUps;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>All families of letters without a plan, by kind.</summary>
public sealed class OfficeLetters(IEnumerable<IOfficeLetter> families)
{
    private readonly Dictionary<MessageKind, IOfficeLetter> _byKind = families.SelectMany(f => f.Kinds.Select(k => (k, f))).ToDictionary(f => f.k, f => f.f);

    /// <summary>The family that writes a kind, or null.</summary>
    public IOfficeLetter? Of(MessageKind kind) => _byKind.GetValueOrDefault(kind);

    /// <summary>Who a message without a student goes to; empty when nobody knows any more.</summary>
    public async Task<string> Addressee(Message message, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(message);
        return Of(message.Kind) is { } family ? await family.Addressee(message, stop) : "";
    }
}
