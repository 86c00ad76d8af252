using System.Globalization;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Students;
using Microsoft.Data.Sqlite;

namespace CoachOffice.Benchmarks.Search;

/// <summary>The search as one would write it without any layer: the same two statements, a reader, the same rows.</summary>
internal sealed class SearchByHand : IDisposable
{
    private readonly SqliteConnection _connection;

    public SearchByHand(string file)
    {
        _connection = new SqliteConnection($"Data Source={file}");
        _connection.Open();
    }

    public StudentList Find(string text)
    {
        var words = StudentSearch.Fold(text).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        using var command = _connection.CreateCommand();
        var where = string.Join(" AND ", ["s.\"ArchivedAt\" IS NULL", .. words.Select((_, i) => $"s.\"SearchText\" LIKE $w{i} ESCAPE '\\'")]);
        command.CommandText = $"""
            SELECT s."Id", s."GivenName", s."FamilyName", s."Email", s."Phone", s."BirthDate", s."Guardian", (SELECT COUNT(*) FROM "Students" AS s WHERE {where})
            FROM "Students" AS s WHERE {where} ORDER BY s."SearchText", s."Id" LIMIT 50 OFFSET 0
            """;
        for (var i = 0; i < words.Length; i++)
            command.Parameters.AddWithValue($"$w{i}", $"%{words[i].Replace("\\", "\\\\", StringComparison.Ordinal).Replace("%", "\\%", StringComparison.Ordinal).Replace("_", "\\_", StringComparison.Ordinal)}%");
        return Rows(command, Zone());
    }

    public void Dispose() => _connection.Dispose();

    private static StudentList Rows(SqliteCommand command, string zone)
    {
        if (zone.Length == 0) throw new InvalidOperationException("The practice has no zone.");
        List<StudentRow> rows = [];
        var total = 0;
        using var reader = command.ExecuteReader();
        while (reader.Read())
        {
            var born = reader.IsDBNull(5) ? (DateOnly?)null : DateOnly.Parse(reader.GetString(5), CultureInfo.InvariantCulture);
            var contact = reader.GetString(3) is { Length: > 0 } mail ? mail : reader.GetString(4);
            rows.Add(new StudentRow(StudentId.From(reader.GetGuid(0)), $"{reader.GetString(1)} {reader.GetString(2)}".Trim(), contact, born?.Year > 2008));
            total = reader.GetInt32(7);
        }

        return new StudentList(rows, total, 1);
    }

    private string Zone()
    {
        using var command = _connection.CreateCommand();
        command.CommandText = "SELECT p.\"Zone\" FROM \"Practices\" AS p LIMIT 2";
        return (string)command.ExecuteScalar()!;
    }
}
