using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using CoachOffice.Data;
using CoachOffice.SeedDemo;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.Demo;

/// <summary>The demo is the same at every run, opens once, and leaves nothing when it is given up half-way.</summary>
[Collection(DemoCollection.Name)]
public sealed class DemoIsTheSameTests(DemoOffice office)
{
    // Salted or random by design: what a password and its stamps become. Keys belong to the machine.
    private static readonly string[] Chance = ["PasswordHash", "SecurityStamp", "ConcurrencyStamp"];

    [Fact]
    public async Task Two_runs_make_the_same_rows()
    {
        var other = await office.Another(opened: false);
        var steps = new Steps();
        Assert.True((await DemoOffice.OpenIn(other, steps)).Succeeded);

        Assert.Equal(await Digest(office.Demo), await Digest(other));
        Assert.Equal(100, steps.All[^1].Percent);
        Assert.True(steps.All.Count > 300);
    }

    [Fact]
    public async Task A_second_opening_is_refused()
    {
        var students = await office.Demo.Read(db => db.Students.CountAsync());

        var again = await DemoOffice.OpenIn(office.Demo);

        Assert.Equal("practice-open", Assert.Single(again.Refusals).Code);
        Assert.Equal(students, await office.Demo.Read(db => db.Students.CountAsync()));
    }

    [Fact]
    public async Task Given_up_half_way_nothing_is_left_and_a_plain_first_run_still_works()
    {
        var other = await office.Another(opened: false);
        using var giveUp = new CancellationTokenSource();
        var steps = new Steps { OnStep = step => { if (step.Done == 30) giveUp.Cancel(); } };

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => DemoPractice.Open(other.Services, DemoOffice.Form, steps, giveUp.Token));

        Assert.Equal((0, 0, 0), await other.Read(async db => (await db.Practices.CountAsync(), await db.Users.CountAsync(), await db.AuditEntries.CountAsync())));
        await other.Must((OpenPractice open) => open.For(DemoOffice.Form with { IsDemo = false }));
    }

    [Fact]
    public async Task A_plain_password_is_refused_before_the_year_begins()
    {
        var other = await office.Another(opened: false);
        var steps = new Steps();

        var refused = await DemoPractice.Open(other.Services, DemoOffice.Form with { Password = "short" }, steps, CancellationToken.None);

        Assert.False(refused.Succeeded);
        Assert.Empty(steps.All);
        Assert.Equal(0, await other.Read(db => db.Practices.CountAsync()));
    }

    private static Task<string> Digest(TestOffice from) => from.Read(async db =>
    {
        var text = new StringBuilder();
        foreach (var table in db.Model.GetEntityTypes().Select(t => t.GetTableName()).OfType<string>().Distinct().Order(StringComparer.Ordinal).Where(t => t != "DataProtectionKeys"))
            text.Append(CultureInfo.InvariantCulture, $"{table} {await Rows(db, table)}\n");
        return text.ToString();
    });

    private static async Task<string> Rows(OfficeDb db, string table)
    {
        var connection = db.Database.GetDbConnection();
        await db.Database.OpenConnectionAsync();
        await using var command = connection.CreateCommand();
        command.CommandText = $"SELECT * FROM \"{table}\"";
        await using var reader = await command.ExecuteReaderAsync();
        var rows = new List<string>();
        while (await reader.ReadAsync())
            rows.Add(string.Join('|', Enumerable.Range(0, reader.FieldCount).Where(i => !Chance.Contains(reader.GetName(i))).Select(i => Convert.ToString(reader.GetValue(i), CultureInfo.InvariantCulture))));
        rows.Sort(StringComparer.Ordinal);
        return $"{rows.Count} {Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', rows))))}";
    }

    private sealed class Steps : IProgress<SeedProgress>
    {
        public List<SeedProgress> All { get; } = [];

        public Action<SeedProgress> OnStep { get; init; } = _ => { };

        public void Report(SeedProgress value)
        {
            All.Add(value);
            OnStep(value);
        }
    }
}
