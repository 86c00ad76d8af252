namespace CoachOffice.Domain.Students;

/// <summary>Who gets a student's mail.</summary>
/// <param name="Name">Their name.</param>
/// <param name="Address">Their address.</param>
/// <param name="IsGuardian">True when it is a minor's guardian.</param>
public sealed record MailRecipient(string Name, string Address, bool IsGuardian);
