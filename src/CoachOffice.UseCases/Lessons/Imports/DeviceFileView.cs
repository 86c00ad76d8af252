using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.Domain.Measuring;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>A file with answers, before it is imported: what would be kept and what not.</summary>
public sealed record DeviceFileView
{
    public required DeviceFile File { get; init; }

    public required string StudentName { get; init; }

    /// <summary>The measures that are read, in the file's order.</summary>
    public required IReadOnlyList<Measure> Measures { get; init; }

    /// <summary>The lessons it would make, the first <see cref="PreviewDeviceFile.MostGroups"/> of them.</summary>
    public required IReadOnlyList<DeviceGroup> Groups { get; init; }

    /// <summary>How many lessons in all.</summary>
    public required int AllGroups { get; init; }

    /// <summary>The first swings as they would be kept.</summary>
    public required IReadOnlyList<DeviceSwing> FirstSwings { get; init; }

    /// <summary>Counts, and the first refused and doubted rows.</summary>
    public required FileOutcome Would { get; init; }

    /// <summary>Rows refused by kind of reason.</summary>
    public required IReadOnlyDictionary<string, int> Reasons { get; init; }
}
