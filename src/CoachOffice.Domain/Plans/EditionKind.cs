namespace CoachOffice.Domain.Plans;

/// <summary>How an edition of the rulebook came about.</summary>
public enum EditionKind
{
    /// <summary>The program brought a book of its own.</summary>
    Shipped,

    /// <summary>Somebody changed entries.</summary>
    Edit,

    /// <summary>Somebody took an earlier edition's changes again.</summary>
    WentBack,

    /// <summary>Somebody brought changes from a file.</summary>
    Import,
}
