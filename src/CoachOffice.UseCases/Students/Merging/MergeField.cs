namespace CoachOffice.UseCases.Students.Merging;

/// <summary>One field of two records, side by side.</summary>
/// <param name="Key">Its name in the form.</param>
/// <param name="Label">Its name for a person.</param>
/// <param name="Stays">As it stands in the record that stays.</param>
/// <param name="Goes">As it stands in the one that goes.</param>
public sealed record MergeField(string Key, string Label, string Stays, string Goes)
{
    /// <summary>True when there is something to choose.</summary>
    public bool Differs => !string.Equals(Stays, Goes, StringComparison.Ordinal);

    /// <summary>True when the other record's value is the better guess: the one that stays has none.</summary>
    public bool TakesOther => Differs && Stays.Length == 0;
}
