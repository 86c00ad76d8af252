namespace CoachOffice.Domain.Students.Imports;

/// <summary>Who a row with a known mail address and another name is.</summary>
public enum SharedMail
{
    /// <summary>Someone else: families share an address.</summary>
    AnotherPerson,

    /// <summary>The same person, written otherwise.</summary>
    SamePerson,
}
