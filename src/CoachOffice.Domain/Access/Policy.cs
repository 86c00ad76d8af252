namespace CoachOffice.Domain.Access;

/// <summary>What a person who signs in may do. The owner may all; a coach teaches; the desk books and keeps addresses.</summary>
public enum Policy
{
    Owner,
    Coach,
    Desk,
}
