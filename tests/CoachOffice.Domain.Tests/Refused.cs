namespace CoachOffice.Domain.Tests;

/// <summary>What a person gets to read when a form is not taken.</summary>
internal static class Refused
{
    /// <summary>Nothing is refused when it fits; otherwise this alone, at this field, in a sentence.</summary>
    public static void Unless(bool fits, IReadOnlyList<Refusal> refusals, string code, string? field)
    {
        if (fits) Assert.Empty(refusals);
        else Only(refusals, code, field);
    }

    /// <summary>One refusal with this code at this field, that ends as a sentence does.</summary>
    public static void Only(IReadOnlyList<Refusal> refusals, string code, string? field)
    {
        var refusal = Assert.Single(refusals);
        Assert.Equal((code, field), (refusal.Code, refusal.Field));
        Assert.Matches("^[A-Z'].{15,}[.]$", refusal.Sentence);
    }
}
