using System.Text;
using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Canonical;

namespace CoachOffice.Drafting.Checks;

/// <summary>One thing wrong with the rules as a whole.</summary>
public sealed record Anomaly
{
    /// <summary>What kind of thing.</summary>
    public required AnomalyKind Kind { get; init; }

    /// <summary>Whether the book may serve all the same.</summary>
    public required AnomalySeverity Severity { get; init; }

    /// <summary>The entries it concerns, the first of them to be changed.</summary>
    public required IReadOnlyList<AnomalyEntry> Entries { get; init; }

    /// <summary>What is wrong and what would mend it.</summary>
    public required string Sentence { get; init; }

    /// <summary>The smallest lesson that shows it: without any one of its readings it no longer does. Null where no lesson can, e.g. of a drill that is never offered.</summary>
    public LessonFacts? Example { get; init; }

    /// <summary>The kind in plain words.</summary>
    public string Name => Terms.Of(Kind).Replace('-', ' ');

    /// <summary>The example as the draft command reads it, in one line; null without one.</summary>
    public string? ExampleJson => Example is null ? null : Encoding.UTF8.GetString(CanonicalInput.Write(Example));

    /// <summary>One line: where the first entry stands, how bad it is, what it is, which entries, what to do.</summary>
    public override string ToString() =>
        $"{Place(Entries[0])}{(Severity == AnomalySeverity.Refuse ? "refused" : "warning")}: {Name}: {string.Join(", ", Entries.Select((e, i) => i == 0 ? e.Id : e.ToString()))}: {Sentence}";

    private static string Place(AnomalyEntry entry) => entry.File is null ? "" : $"{entry.File}:{entry.Line}: ";
}
