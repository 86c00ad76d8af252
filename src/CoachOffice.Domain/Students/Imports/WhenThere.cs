namespace CoachOffice.Domain.Students.Imports;

/// <summary>What happens with a row whose student is there already.</summary>
public enum WhenThere
{
    /// <summary>Nothing.</summary>
    Skip,

    /// <summary>Fields that are empty at the student are filled; nothing is overwritten.</summary>
    FillEmpty,
}
