using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using MimeKit;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>A claimed message that goes now.</summary>
/// <param name="Message">Which.</param>
/// <param name="Practice">From whom.</param>
/// <param name="MayRepeat">It may go once more when nobody knows whether it arrived.</param>
/// <param name="Write">Writes its mail; links minted meanwhile are in the context, unsaved.</param>
public sealed record Departure(Message Message, Practice Practice, bool MayRepeat, Func<Task<MimeMessage>> Write)
{
    /// <summary>The door it leaves through when it is no mail; null for mail.</summary>
    public IMailDoor? Door { get; init; }

    /// <summary>What else changes with it having gone, in the transaction that notes it; null when nothing does. It is given the services of whatever scope notes it, which may be a later one.</summary>
    public Func<IServiceProvider, Task>? AfterSent { get; init; }
}
