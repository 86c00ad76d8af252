namespace CoachOffice.Domain.Students.Imports;

/// <summary>How a column with whole names writes them.</summary>
public enum NameOrder
{
    /// <summary>"Anna Maria Berg": the last word is the family name.</summary>
    GivenFirst,

    /// <summary>"Berg, Anna Maria": what stands before the comma, or else the first word, is the family name.</summary>
    FamilyFirst,
}
