using System.Diagnostics;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.SeedDemo;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Tests.Fixtures;

namespace CoachOffice.UseCases.Tests.Demo;

/// <summary>The demo practice, opened once for all tests that look at it.</summary>
public sealed class DemoOffice(Templates templates) : OfficeFixture(templates.Sqlite)
{
    private TestOffice? _demo;

    public TestOffice Demo => _demo!;

    public Actor DemoOwner { get; private set; } = Actor.Clock;

    public TimeSpan Took { get; private set; }

    public static FirstRunForm Form { get; } = new()
    {
        OwnerName = "Marit Solberg",
        OwnerEmail = "marit@academy.example",
        Password = "seven rivers under glass",
        IsDemo = true,
        Practice = new PracticeDetails { Name = "Fernlea Academy", Zone = "Europe/London", Currency = "GBP" },
    };

    public static Task<Outcome<AccountId>> OpenIn(TestOffice office, IProgress<SeedProgress>? progress = null)
    {
        ArgumentNullException.ThrowIfNull(office);
        return DemoPractice.Open(office.Services, Form, progress, TestContext.Current.CancellationToken);
    }

    public override async ValueTask InitializeAsync()
    {
        await base.InitializeAsync();
        _demo = await Another(opened: false);
        var watch = Stopwatch.StartNew();
        var opened = await OpenIn(_demo);
        Took = watch.Elapsed;
        DemoOwner = new Actor(opened.Value, Form.OwnerName, Policy.Owner);
    }
}
