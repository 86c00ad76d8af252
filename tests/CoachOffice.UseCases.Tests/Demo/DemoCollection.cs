namespace CoachOffice.UseCases.Tests.Demo;

/// <summary>A year takes a while: all tests of the demo share one.</summary>
[CollectionDefinition(Name)]
public sealed class DemoCollection : ICollectionFixture<DemoOffice>
{
    public const string Name = "demo";
}
