namespace CoachOffice.UseCases.FollowUps.Texts;

/// <summary>The one door through which text messages leave.</summary>
public interface ITextDoor
{
    /// <summary>Hands a text over. Never throws for what a gateway may do; says what is known instead.</summary>
    Task<Handover> HandOver(TextMessage text, CancellationToken stop);
}
