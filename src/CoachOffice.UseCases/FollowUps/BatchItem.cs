using CoachOffice.Domain.FollowUps;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>A claimed message in its batch: its end is known, or its mail is written, or neither yet since it waits for those before it.</summary>
/// <param name="Message">Which.</param>
/// <param name="Over">What came of it, when it does not go.</param>
/// <param name="Mail">Its mail, when it goes.</param>
public sealed record BatchItem(Message Message, SendingResult? Over = null, WrittenMail? Mail = null)
{
    /// <summary>Its facts may change by what goes before it.</summary>
    public bool Waits => Over is null && Mail is null;
}
