using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>One row of a file: a swing, or why it is none.</summary>
internal sealed record ReadRow
{
    public NotedRow? Refused { get; init; }

    /// <summary>It is kept, but something about it is odd.</summary>
    public NotedRow? Doubt { get; init; }

    public LocalDate Day { get; init; }

    public Club Club { get; init; }

    /// <summary>By the mapping's columns, in the measures' own units; null was not measured.</summary>
    public double?[] Values { get; init; } = [];

    public static ReadRow No(int line, string code, string sentence) => new() { Refused = new NotedRow(line, code, sentence) };
}
