namespace CoachOffice.Domain.Ledger;

/// <summary>How money changed hands. Card payments run through the bank's own terminal: nothing of a card is ever kept here.</summary>
public enum PaymentMethod
{
    Cash,

    CardTerminal,

    Transfer,
}
