using CoachOffice.Domain.Measuring;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Plans;

/// <summary>Faults in words.</summary>
public static class FaultWords
{
    /// <summary>The measure's name and on which side of the wanted range it lies.</summary>
    public static string Of(Book book, FaultId fault) => $"{Measure(book, fault)}, {(fault.Side == Side.Low ? "below" : "above")} the wanted range";

    /// <summary>The measure's name; its id when the book has lost it.</summary>
    public static string Measure(Book book, FaultId fault)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Find(fault.Measure)?.Name ?? fault.Measure.Value;
    }
}
