namespace CoachOffice.UseCases.Access;

/// <summary>One field as it is kept and as this person wants it.</summary>
/// <param name="Field">Name of the form field.</param>
/// <param name="Label">As the page calls it.</param>
/// <param name="Kept">The saved value, as shown.</param>
/// <param name="Yours">The value in the form, as shown.</param>
public sealed record Difference(string Field, string Label, string Kept, string Yours);
