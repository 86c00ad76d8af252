using CoachOffice.UseCases.FollowUps;

namespace CoachOffice.UseCases.Ledger.Documents;

/// <summary>What the letter of a receipt or statement speaks of.</summary>
public sealed record DocumentLetterFacts : OfficeLetterFacts
{
    /// <summary>As printed.</summary>
    public required string Number { get; init; }

    /// <summary>What was paid, or the balance.</summary>
    public required string Total { get; init; }

    /// <summary>First day of a statement, written out; empty on a receipt.</summary>
    public string FirstDay { get; init; } = "";

    /// <summary>Last day of a statement, or the day of the payment, written out.</summary>
    public required string LastDay { get; init; }

    /// <summary>How it was paid; empty on a statement.</summary>
    public string Method { get; init; } = "";

    /// <summary>What the balance means, a sentence.</summary>
    public string Balance { get; init; } = "";

    /// <summary>One line each.</summary>
    public required IReadOnlyList<string> Lines { get; init; }

    /// <summary>One rate each.</summary>
    public required IReadOnlyList<string> Taxes { get; init; }

    /// <summary>Who issues it, with the tax number.</summary>
    public required IReadOnlyList<string> From { get; init; }
}
