namespace CoachOffice.Drafting.Reading.Own;

/// <summary>What in a book is the practice's own.</summary>
/// <param name="Written">Entries that replace a shipped one or are new.</param>
/// <param name="Removed">Shipped entries that were taken away.</param>
public sealed record OwnRules(IReadOnlyList<OwnEntry> Written, IReadOnlyList<OwnEntry> Removed)
{
    /// <summary>A book as it shipped.</summary>
    public static OwnRules None { get; } = new([], []);

    /// <summary>True when nothing was changed.</summary>
    public bool AreNone => Written.Count + Removed.Count == 0;
}
