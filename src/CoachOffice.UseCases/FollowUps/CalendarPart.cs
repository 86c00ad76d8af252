namespace CoachOffice.UseCases.FollowUps;

/// <summary>A calendar object that goes along with a letter (RFC 6047).</summary>
/// <param name="Method">Its METHOD, said again in the part's head: REQUEST or CANCEL.</param>
/// <param name="Text">The VCALENDAR.</param>
public sealed record CalendarPart(string Method, string Text);
