using System.Text.RegularExpressions;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Bookings;

/// <summary>Free times of a week cost the same in the first year as in the tenth: no query walks over a table that grows with every booking.</summary>
public sealed partial class DiaryPlanTests(SqliteOffice fixture) : IClassFixture<SqliteOffice>
{
    private static readonly string[] Growing = ["TakenTimes", "Bookings", "BusyTimes", "HoursExceptions"];

    [Fact]
    public async Task Every_query_for_free_times_goes_by_an_index()
    {
        using var log = new CommandLog();
        var diary = await Diary.Of(await fixture.Another(opened: true, services => services.AddSingleton<ILoggerProvider>(log)));
        var coach = diary.Office.Coach.Account!.Value;
        await diary.Office.GiveHours(coach, diary.Range, IsoDayOfWeek.Tuesday, "09:00", "17:00");
        var question = new FreeTimesQuestion { OfferingId = diary.Private, From = new(2026, 3, 9), Until = new(2026, 4, 12), Student = await diary.Student("Ann") };
        var before = log.Statements.Count;

        Assert.NotEmpty(await diary.Office.Must((FindFreeTimes find) => find.For(question, diary.Office.Desk)));

        var asked = log.Statements.Skip(before).Select(s => s[(s.IndexOf('\n', StringComparison.Ordinal) + 1)..]).Where(s => Growing.Any(t => s.Contains($"\"{t}\"", StringComparison.Ordinal))).ToList();
        Assert.Equal(3, asked.Count);
        foreach (var sql in asked)
        {
            var steps = await diary.Office.Read(db => Plan(db.Database.GetDbConnection(), sql));
            Assert.NotEmpty(steps);
            Assert.All(steps, step => Assert.DoesNotContain("SCAN", step, StringComparison.Ordinal));
        }
    }

    private static async Task<IReadOnlyList<string>> Plan(System.Data.Common.DbConnection connection, string sql)
    {
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
        command.CommandText = "EXPLAIN QUERY PLAN " + sql;
        foreach (var name in Parameters().Matches(sql).Select(m => m.Value).Distinct())
        {
            var parameter = command.CreateParameter();
            (parameter.ParameterName, parameter.Value) = (name, DBNull.Value);
            command.Parameters.Add(parameter);
        }

        var steps = new List<string>();
        await using var reader = await command.ExecuteReaderAsync();
        while (await reader.ReadAsync()) steps.Add(reader.GetString(3));
        return steps;
    }

    [GeneratedRegex(@"@\w+", RegexOptions.None, 1000)]
    private static partial Regex Parameters();
}
