using CoachOffice.Domain.Measuring;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>A column of a file.</summary>
/// <param name="Index">Which, from 0.</param>
/// <param name="Name">As a person tells it from the others; two of one name are numbered.</param>
/// <param name="Unit">The unit its head names, or null.</param>
public sealed record FileColumn(int Index, string Name, Unit? Unit)
{
    /// <summary>The name without unit, in small letters with single spaces.</summary>
    public string Plain { get; init; } = "";

    /// <summary>True when another column has the same name.</summary>
    public bool IsDouble { get; init; }
}
