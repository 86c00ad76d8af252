namespace CoachOffice.Domain.Students;

/// <summary>The adult who is the contact of a minor; messages go to them.</summary>
public sealed record Guardian
{
    public required string Name { get; init; }

    public required string Email { get; init; }

    public string Phone { get; init; } = "";

    /// <summary>Mother, father, carer, as told.</summary>
    public string Relation { get; init; } = "";
}
