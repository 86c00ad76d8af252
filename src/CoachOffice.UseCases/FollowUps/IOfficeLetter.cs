using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using MimeKit;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>
/// A family of letters that belong to no plan: invitations, receipts and the like. Outbox, lease, attempts and audit are everybody's; what such a message
/// speaks of, whether it is still wanted, who reads it and its words are the family's own. Sealed classes of this shape are found by themselves.
/// </summary>
public interface IOfficeLetter
{
    /// <summary>The kinds it writes; no two families share one.</summary>
    IReadOnlyList<MessageKind> Kinds { get; }

    /// <summary>When nobody knows whether it arrived: true sends it again under the same Message-ID, false asks a person, as everything about money does.</summary>
    bool MayRepeat { get; }

    /// <summary>Whether it is wanted now, looked up afresh. Erased and archived students, night hours and missing addresses are looked after before and behind it.</summary>
    Task<SendingVerdict> MayGo(OfficeFacts facts, CancellationToken stop);

    /// <summary>Who reads it; null when there is no address. <see cref="OfficeFacts.StudentsMail"/> where it goes to the student.</summary>
    Task<MailRecipient?> Recipient(OfficeFacts facts, CancellationToken stop);

    /// <summary>The mail as it leaves. Private links minted for it are added to the context; the caller saves them before sending, and forgets them when it cannot have arrived.</summary>
    Task<MimeMessage> Write(OfficeFacts facts, MailRecipient recipient, CancellationToken stop);

    /// <summary>Who it goes to, for the coach's list, where a message names no student.</summary>
    Task<string> Addressee(Message message, CancellationToken stop);
}
