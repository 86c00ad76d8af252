namespace CoachOffice.Drafting.Patterns;

/// <summary>What a condition says of a lesson; a measure nobody read is neither yes nor no.</summary>
public enum Truth
{
    No,
    Yes,
    Unmeasured,
}
