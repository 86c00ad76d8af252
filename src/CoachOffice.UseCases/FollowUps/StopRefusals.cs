using CoachOffice.Domain;

namespace CoachOffice.UseCases.FollowUps;

internal static class StopRefusals
{
    public static readonly Refusal NotFound = new("stop-link-not-found", "This link is no longer good. Reply to the mail, and your coach stops the messages.");

    public static readonly Refusal Unknown = new("stop-unknown", "Pick one of the kinds of messages on this page.");

    public static readonly Refusal Busy = new("stop-busy", "Somebody changed this at the same moment; press once more.");

    public static readonly Refusal Guardian = new("stop-guardian", "Only the guardian of a student under 18 can withdraw here.");
}
