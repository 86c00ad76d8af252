namespace CoachOffice.Domain.Measuring;

/// <summary>The arithmetic of a derived measure.</summary>
public enum DerivationKind
{
    Sum,
    Ratio,
}
