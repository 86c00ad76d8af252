using CoachOffice.Domain.Students;
using Microsoft.Data.Sqlite;

namespace CoachOffice.Benchmarks.Office;

/// <summary>Copies rows of an SQLite file many times over, with some columns told anew. Ids are <c>id(kind, number)</c>.</summary>
internal sealed class BulkRows : IDisposable
{
    private readonly SqliteConnection _connection;

    public BulkRows(string file)
    {
        _connection = new SqliteConnection($"Data Source={file};Foreign Keys=False;Pooling=False");
        _connection.Open();
        _connection.CreateFunction("given", (long i) => SomePeople.GivenName(i));
        _connection.CreateFunction("family", (long i) => SomePeople.FamilyName(i));
        _connection.CreateFunction("email", (long i) => SomePeople.Email(i));
        _connection.CreateFunction("phone", (long i) => SomePeople.Phone(i));
        _connection.CreateFunction("folded", (long i) => StudentSearch.TextOf(SomePeople.FamilyName(i), SomePeople.GivenName(i), SomePeople.Email(i), SomePeople.Phone(i)));
        _connection.CreateFunction("id", (long kind, long i) => $"{kind:X8}-0000-7000-8000-{i:X12}");
        Run("PRAGMA synchronous=OFF");
        Run("BEGIN");
    }

    /// <summary>Copies the rows of a table that the condition names, once for each i from 1 to the count.</summary>
    public void Copy(string table, string where, int count, params (string Column, string Sql)[] anew) => CopyWith("", table, where, count, anew);

    /// <summary>Likewise, once for each row joined, e.g. <c>JOIN Given g ON g."K" = n.i % 3</c>.</summary>
    public void CopyWith(string join, string table, string where, int count, params (string Column, string Sql)[] anew)
    {
        var columns = Texts($"SELECT name FROM pragma_table_info('{table}')");
        var values = columns.Select(c => anew.FirstOrDefault(a => a.Column == c).Sql ?? $"t.\"{c}\"");
        Run($"""
            WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < {count})
            INSERT INTO "{table}" ({string.Join(", ", columns.Select(c => $"\"{c}\""))})
            SELECT {string.Join(", ", values)} FROM n CROSS JOIN (SELECT * FROM "{table}" WHERE {where} LIMIT {(join.Length == 0 ? -1 : 1)}) t {join}
            """);
    }

    /// <summary>Makes a table of these rows for <see cref="CopyWith"/>, which ends with the connection; its first column is the key.</summary>
    public void Give(string table, string[] columns, IEnumerable<object[]> rows)
    {
        Run($"CREATE TEMP TABLE \"{table}\" ({string.Join(", ", columns.Select(c => $"\"{c}\""))})");
        using var command = _connection.CreateCommand();
        command.CommandText = $"INSERT INTO \"{table}\" VALUES ({string.Join(", ", columns.Select(c => $"${c}"))})";
        foreach (var column in columns) command.Parameters.Add(new SqliteParameter { ParameterName = $"${column}" });
        foreach (var row in rows)
        {
            for (var at = 0; at < row.Length; at++) command.Parameters[at].Value = row[at];
            command.ExecuteNonQuery();
        }

        Run($"CREATE INDEX temp.\"By{table}\" ON \"{table}\" (\"{columns[0]}\")");
    }

    public IReadOnlyList<string> Texts(string sql)
    {
        using var command = _connection.CreateCommand();
        command.CommandText = sql;
        using var reader = command.ExecuteReader();
        var found = new List<string>();
        while (reader.Read()) found.Add(reader.GetString(0));
        return found;
    }

    public void Keep()
    {
        Run("COMMIT");
        Run("PRAGMA wal_checkpoint(TRUNCATE)");
    }

    public void Dispose() => _connection.Dispose();

    private void Run(string sql)
    {
        using var command = _connection.CreateCommand();
        command.CommandText = sql;
        command.CommandTimeout = 0;
        command.ExecuteNonQuery();
    }
}
