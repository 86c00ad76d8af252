using CoachOffice.Domain.Access;
using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.Domain.Lessons;

/// <summary>A coach's own list of measures for a purpose, in the order they are read.</summary>
public sealed class ReadingSheet
{
    /// <summary>The longest name.</summary>
    public const int LongestName = 60;

    private ReadingSheet()
    {
    }

    public Guid Id { get; private set; }

    /// <summary>Whose sheet it is; every coach sees only their own and the shipped ones.</summary>
    public AccountId Owner { get; private set; }

    public string Name { get; private set; } = "";

    /// <summary>Ids of measures, first read first.</summary>
    public IReadOnlyList<MeasureId> Measures { get; private set; } = [];

    public Instant CreatedAt { get; private set; }

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    /// <summary>A new list.</summary>
    public static ReadingSheet Of(Guid id, AccountId owner, Instant now) => new() { Id = id, Owner = owner, CreatedAt = now };

    /// <summary>Names it and says what is on it.</summary>
    public void Write(string name, IReadOnlyList<MeasureId> measures)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(measures);
        (Name, Measures) = (name.Trim(), [.. measures.Distinct()]);
    }
}
