using CoachOffice.Data;

namespace CoachOffice.UseCases.Tests.Fixtures;

/// <summary>A migrated database that tests get copies of.</summary>
public interface ITemplate : IAsyncDisposable
{
    /// <summary>Why copies cannot be had here, or null.</summary>
    string? Missing { get; }

    /// <summary>A copy of its own, empty or with the practice of <see cref="TestPractice"/> opened.</summary>
    Task<ITestDatabase> Copy(bool opened);
}
