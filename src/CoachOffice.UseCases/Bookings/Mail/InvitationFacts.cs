using CoachOffice.Domain.Students;
using CoachOffice.UseCases.FollowUps;

namespace CoachOffice.UseCases.Bookings.Mail;

/// <summary>To whom an invitation goes, and whether it calls one off.</summary>
public sealed record InvitationFacts(OfficeFacts Facts, MailRecipient Recipient, bool Cancels);
