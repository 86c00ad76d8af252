namespace CoachOffice.Domain.Plans;

/// <summary>The count that shows a drill is learned, on each of two separate days.</summary>
/// <param name="Hits">How many must succeed.</param>
/// <param name="Of">Out of how many.</param>
/// <param name="What">What counts as a success, as the end of "8 of 10 ...".</param>
public sealed record DoneWhen(int Hits, int Of, string What);
