using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Rulebook;

namespace CoachOffice.UseCases.Tests.Fixtures;

/// <summary>The practice most tests work in: an owner, a coach and a desk, and the shipped rulebook in force.</summary>
public static class TestPractice
{
    public const string Password = "a brick of plain words 7";

    public static PracticeDetails Details { get; } = new() { Name = "Harbour Road Golf Practice", Zone = "Europe/London", Currency = "GBP", MailFrom = "office@harbour-road.example" };

    public static FirstRunForm FirstRun { get; } = new()
    {
        Practice = Details,
        OwnerName = "Olive Owner",
        OwnerEmail = "olive@harbour-road.example",
        Password = Password,
    };

    public static async Task Open(TestOffice office)
    {
        ArgumentNullException.ThrowIfNull(office);
        var owner = await office.Do((OpenPractice open) => open.For(FirstRun));
        var actor = new Actor(owner.Value, FirstRun.OwnerName, Policy.Owner);
        await Add(office, actor, "Carl Coach", Policy.Coach);
        await Add(office, actor, "Dora Desk", Policy.Desk);
        await office.Must((AdoptShippedRulebook adopt) => adopt.AtStartUp());
    }

    private static async Task Add(TestOffice office, Actor owner, string name, Policy policy)
    {
        var form = new NewAccountForm { DisplayName = name, Email = $"{name.Split(' ')[0]}@harbour-road.example", Password = Password, Policy = policy };
        var added = await office.Do((AddAccount add) => add.For(form, owner));
        Assert.True(added.Succeeded);
    }
}
