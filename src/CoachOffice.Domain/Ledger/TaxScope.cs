namespace CoachOffice.Domain.Ledger;

/// <summary>How often tax is rounded where one charge has several lines. Both are lawful in Australia (GST Act 1999 s 9-90(2)), the practice chooses.</summary>
public enum TaxScope
{
    /// <summary>Each line by itself, then summed.</summary>
    PerLine,

    /// <summary>Lines of one rate are summed, then rounded once.</summary>
    PerDocument,
}
