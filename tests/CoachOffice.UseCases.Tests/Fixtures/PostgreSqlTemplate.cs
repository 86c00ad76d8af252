using CoachOffice.Data;
using Npgsql;

namespace CoachOffice.UseCases.Tests.Fixtures;

public sealed class PostgreSqlTemplate : ITemplate
{
    private readonly string? _admin = Environment.GetEnvironmentVariable("COACHOFFICE_TEST_DB");
    private readonly string _prefix = $"coachoffice_test_{Environment.ProcessId}";
    private readonly Lazy<Task<string>> _empty;
    private readonly Lazy<Task<string>> _opened;
    private int _copies;

    public PostgreSqlTemplate()
    {
        _empty = new(() => Make("empty", template: "template0", TemplateMaking.Migrate));
        _opened = new(async () => await Make("opened", await _empty.Value, TemplateMaking.Open));
    }

    public string? Missing => string.IsNullOrWhiteSpace(_admin)
        ? "No PostgreSQL: set COACHOFFICE_TEST_DB to the connection string that .ci/start-postgres prints."
        : null;

    public async Task<ITestDatabase> Copy(bool opened)
    {
        var source = await (opened ? _opened : _empty).Value;
        var name = $"{_prefix}_{Interlocked.Increment(ref _copies)}";
        await Run($"CREATE DATABASE \"{name}\" TEMPLATE \"{source}\"");
        return new TestDatabase(this, name);
    }

    /// <summary>A database without a table.</summary>
    public async Task<ITestDatabase> Bare()
    {
        var name = $"{_prefix}_{Interlocked.Increment(ref _copies)}";
        await Run($"CREATE DATABASE \"{name}\" TEMPLATE template0");
        return new TestDatabase(this, name);
    }

    public async ValueTask DisposeAsync()
    {
        if (_empty.IsValueCreated) await Drop(await _empty.Value);
        if (_opened.IsValueCreated) await Drop(await _opened.Value);
    }

    private async Task<string> Make(string what, string template, Func<OfficeDatabase, Task> make)
    {
        var name = $"{_prefix}_{what}";
        await Run($"CREATE DATABASE \"{name}\" TEMPLATE \"{template}\"");
        await make(On(name));
        Forget(name);
        return name;
    }

    private OfficeDatabase On(string name) =>
        new(DatabaseProvider.PostgreSql, new NpgsqlConnectionStringBuilder(_admin) { Database = name, MaxPoolSize = 20 }.ConnectionString);

    private async Task Drop(string name)
    {
        Forget(name);
        await Run($"DROP DATABASE IF EXISTS \"{name}\" WITH (FORCE)");
    }

    // A template must have no connections when it is copied.
    private void Forget(string name)
    {
        using var connection = new NpgsqlConnection(On(name).ConnectionString);
        NpgsqlConnection.ClearPool(connection);
    }

    private async Task Run(string sql)
    {
        await using var connection = new NpgsqlConnection(_admin);
        await connection.OpenAsync();
        await using var command = new NpgsqlCommand(sql, connection);
        await command.ExecuteNonQueryAsync();
    }

    private sealed class TestDatabase(PostgreSqlTemplate template, string name) : ITestDatabase
    {
        public OfficeDatabase Database { get; } = template.On(name);

        public async ValueTask DisposeAsync() => await template.Drop(name);
    }
}
