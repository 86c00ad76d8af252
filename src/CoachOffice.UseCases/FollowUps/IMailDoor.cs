using MimeKit;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>The one door through which mail leaves.</summary>
public interface IMailDoor
{
    /// <summary>Hands a message over. Never throws for what a mail server may do; says what is known instead.</summary>
    Task<Handover> HandOver(MimeMessage mail, CancellationToken cancellationToken);

    /// <summary>Nothing more goes for now; what is kept open between two messages may be closed.</summary>
    Task Rest() => Task.CompletedTask;
}
