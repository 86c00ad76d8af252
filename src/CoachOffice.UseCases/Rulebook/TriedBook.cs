using CoachOffice.Domain;
using CoachOffice.Drafting;
using CoachOffice.Drafting.Checks;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Writing;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>What came of trying a book: the book ready to be adopted, or every fault and failed case.</summary>
public sealed record TriedBook
{
    /// <summary>The code of the refusals, for tests and pages.</summary>
    public const string Code = "rulebook-faulty";

    /// <summary>Faults and failed cases; empty when there is a book.</summary>
    public required IReadOnlyList<Fault> Faults { get; init; }

    /// <summary>What does not keep the book from serving.</summary>
    public required IReadOnlyList<Fault> Warnings { get; init; }

    /// <summary>What the entries make of each other; empty while there are faults.</summary>
    public IReadOnlyList<Anomaly> Anomalies { get; init; } = [];

    /// <summary>The shipped book below it.</summary>
    public ShippedBase? Shipped { get; init; }

    /// <summary>The book in its canonical form, compiled.</summary>
    public CompiledRulebook? Compiled { get; init; }

    /// <summary>The book in its canonical form.</summary>
    public LoadedRulebook? Loaded => Compiled?.Loaded;

    /// <summary>Its own changes in their one form.</summary>
    public string Own => Loaded is null ? "" : Loaded.Text.Files.GetValueOrDefault(OwnFiles.Kept, "");

    /// <summary>Why it is not adopted: each fault at its place, or that it says nothing new; empty when it can be.</summary>
    public IReadOnlyList<Refusal> Against(StandingBook standing)
    {
        ArgumentNullException.ThrowIfNull(standing);
        if (Faults.Count > 0) return [.. Faults.Select(f => new Refusal(Code, f.ToString(), f.File))];
        var same = Shipped!.Sha256 == standing.Edition.ShippedSha256 && Own == standing.Edition.Own;
        return same ? [new Refusal("nothing-changed", "This is what the rulebook says already; nothing was saved.")] : [];
    }

    /// <summary>The edition it is as the next after the one in force.</summary>
    public AdoptedEdition After(StandingBook standing)
    {
        ArgumentNullException.ThrowIfNull(standing);
        return new AdoptedEdition(standing.Edition.Number + 1, Loaded!.Sha256, BookChanges.Between(standing.Loaded, Loaded), Warnings);
    }
}
