using System.Text;
using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;
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

    /// <summary>The name inside the first entry that it is about, for a form that shows it there; <see cref="Fault.WholeFile"/> for the entry as a whole.</summary>
    public string Field => (Entries[0].Kind, Kind) switch
    {
        ("patterns", AnomalyKind.NeverTrue or AnomalyKind.AlwaysTrue or AnomalyKind.SaidTwice) => "when",
        ("patterns", AnomalyKind.InsideAnother or AnomalyKind.Masked) => "precedence",
        ("patterns", AnomalyKind.Conflict) => "root",
        ("drills", AnomalyKind.NoGate or AnomalyKind.Unreachable) => "trains",
        ("progressions", _) => "faults",
        ("cautions", _) => "when",
        ("ranges", _) when Example is { } example => Terms.Of(example.Club),
        _ => Fault.WholeFile,
    };

    /// <summary>The example for a person, by the book's ids, e.g. <c>driver, impact-spine-tilt 14 deg</c>; null without one.</summary>
    public string? ExampleText => Example is null ? null : string.Join(", ", Example.Readings.Select(r => $"{r.Measure.Value} {r.Value}").Prepend(Terms.Of(Example.Club)));

    /// <summary>The example as the draft command reads it, in one line; null without one.</summary>
    public string? ExampleJson => Example is null ? null : Encoding.UTF8.GetString(CanonicalInput.Write(Example));

    /// <summary>One line: where the first entry stands, how bad it is, what it is, which entries, what to do.</summary>
    public override string ToString() =>
        $"{Place(Entries[0])}{(Severity == AnomalySeverity.Refuse ? "refused" : "warning")}: {Name}: {string.Join(", ", Entries.Select((e, i) => i == 0 ? e.Id : e.ToString()))}: {Sentence}";

    private static string Place(AnomalyEntry entry) => entry.File is null ? "" : $"{entry.File}:{entry.Line}: ";
}
