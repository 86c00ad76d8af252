using CoachOffice.Data;

namespace CoachOffice.UseCases.Tests.Fixtures;

/// <summary>Brings a new database to the schema, and opens the test practice in it.</summary>
internal static class TemplateMaking
{
    public static async Task Migrate(OfficeDatabase database)
    {
        await using var office = await TestOffice.On(database, opened: false);
        var refusal = await office.Do((PrepareDatabase prepare) => prepare.Now(CancellationToken.None));
        Assert.Null(refusal);
    }

    public static async Task Open(OfficeDatabase database)
    {
        await using var office = await TestOffice.On(database, opened: false);
        await TestPractice.Open(office);
    }
}
