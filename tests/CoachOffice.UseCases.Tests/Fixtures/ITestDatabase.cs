using CoachOffice.Data;

namespace CoachOffice.UseCases.Tests.Fixtures;

/// <summary>One copy; gone when disposed.</summary>
public interface ITestDatabase : IAsyncDisposable
{
    OfficeDatabase Database { get; }
}
