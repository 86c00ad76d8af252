namespace CoachOffice.Domain.Ledger;

/// <summary>The last number given to documents of one kind in one year. It is raised in the transaction that writes the document, so a failed one leaves no gap.</summary>
public sealed class DocumentCounter
{
    private DocumentCounter()
    {
    }

    public DocumentKind Kind { get; private set; }

    public int Year { get; private set; }

    public int Last { get; private set; }
}
