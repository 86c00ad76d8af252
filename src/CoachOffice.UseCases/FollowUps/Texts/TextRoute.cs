using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.FollowUps.Texts;

/// <summary>How a message of a family leaves: as a text where its reader wants that and the family can, else as mail.</summary>
public sealed class TextRoute(TextDoors doors)
{
    /// <summary>The departure by text, or null for mail.</summary>
    public Departure? Of(OfficeFacts facts, IOfficeLetter family, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(family);
        if (family is not ITextLetter texts || WaysOfText.Number(facts) is not { } number) return null;
        return new Departure(facts.Message, facts.Practice, family.MayRepeat, async () => TextDeparture.Of(facts.Message.StableName, await texts.Words(facts, stop)))
        {
            Door = new TextDeparture(doors.For(facts.Practice), number),
        };
    }

    /// <summary>Who reads it: the number stands for an address where it goes by text, so that nobody without mail is missed.</summary>
    public static MailRecipient? Reader(OfficeFacts facts, IOfficeLetter family) =>
        family is ITextLetter && WaysOfText.Number(facts) is { } number ? new MailRecipient(facts.Student!.FullName, number, facts.IsMinor) : null;
}
