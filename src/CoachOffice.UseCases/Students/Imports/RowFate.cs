namespace CoachOffice.UseCases.Students.Imports;

/// <summary>What becomes of a row.</summary>
public enum RowFate
{
    /// <summary>A new student.</summary>
    New,

    /// <summary>The student is there and gets empty fields filled.</summary>
    Fills,

    /// <summary>The student is there and stays as they are.</summary>
    Known,

    /// <summary>It cannot be brought in.</summary>
    Refused,
}
