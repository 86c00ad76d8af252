namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>What a field names by a word of the book.</summary>
internal enum PickKind
{
    Measure,
    Fault,
    Drill,
    Pattern,
    Caution,
    Load,
}
