using MimeKit;

namespace CoachOffice.UseCases.FollowUps.Texts;

/// <summary>A family of letters that can be said in a few words to a telephone as well: notes about lessons, never about health, plans or money.</summary>
public interface ITextLetter : IOfficeLetter
{
    /// <summary>The words, with the private link to the lessons. Links minted for it are added to the context as with mail.</summary>
    Task<string> Words(OfficeFacts facts, CancellationToken stop);
}
