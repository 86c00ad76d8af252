using Npgsql;

namespace CoachOffice.Web.Tests.Nodes;

/// <summary>An empty database on the test server, and the data folder several nodes share; both gone when disposed.</summary>
internal sealed class NodeDatabase : IAsyncDisposable
{
    private static readonly string? Admin = Environment.GetEnvironmentVariable("COACHOFFICE_TEST_DB");
    private static int _count;

    private readonly string _name = $"coachoffice_nodes_{Environment.ProcessId}_{Interlocked.Increment(ref _count)}";

    public DirectoryInfo Folder { get; } = Directory.CreateTempSubdirectory("coachoffice-nodes-");

    public string ConnectionString => new NpgsqlConnectionStringBuilder(Admin) { Database = _name, MaxPoolSize = 20 }.ConnectionString;

    public static async Task<NodeDatabase> Make()
    {
        if (string.IsNullOrWhiteSpace(Admin)) Assert.Skip("No PostgreSQL: set COACHOFFICE_TEST_DB to the connection string that .ci/start-postgres prints.");
        var made = new NodeDatabase();
        await Run(Admin!, $"CREATE DATABASE \"{made._name}\" TEMPLATE template0");
        return made;
    }

    /// <summary>The first column of the first row.</summary>
    public async Task<string> Ask(string sql)
    {
        await using var connection = new NpgsqlConnection(ConnectionString);
        await connection.OpenAsync();
        await using var command = new NpgsqlCommand(sql, connection);
        return $"{await command.ExecuteScalarAsync()}";
    }

    public async ValueTask DisposeAsync()
    {
        await using (var connection = new NpgsqlConnection(ConnectionString)) NpgsqlConnection.ClearPool(connection);
        await Run(Admin!, $"DROP DATABASE IF EXISTS \"{_name}\" WITH (FORCE)");
        Folder.Delete(recursive: true);
    }

    private static async Task Run(string connectionString, string sql)
    {
        await using var connection = new NpgsqlConnection(connectionString);
        await connection.OpenAsync();
        await using var command = new NpgsqlCommand(sql, connection);
        await command.ExecuteNonQueryAsync();
    }
}
