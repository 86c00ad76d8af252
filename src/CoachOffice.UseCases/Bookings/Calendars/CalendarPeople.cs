using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Bookings.Calendars;

/// <summary>Who invites whom.</summary>
/// <param name="OrganizerName">The practice.</param>
/// <param name="OrganizerAddress">Its mail address.</param>
/// <param name="Attendee">Who reads it; nobody else is ever named.</param>
public sealed record CalendarPeople(string OrganizerName, string OrganizerAddress, MailRecipient Attendee);
