using System.Globalization;
using System.Text;
using CsvHelper;
using Microsoft.Data.Sqlite;

namespace CoachOffice.Benchmarks.Radar;

/// <summary>The least a program could do: read the cells, turn them into numbers, and insert the same rows with one prepared statement a table in one transaction. It checks nothing, converts nothing, grades nothing and keeps no account of it.</summary>
internal sealed class BareImport : IDisposable
{
    private const int FirstMeasure = 2;

    private static readonly string[] Measures = ["club-speed", "ball-speed", "attack-angle", "club-path", "face-to-path", "start-direction", "launch-angle", "carry"];

    private readonly SqliteConnection _connection;
    private readonly string _student;
    private readonly string _coach;
    private long _next;

    public BareImport(string file, Guid student, Guid coach)
    {
        (_student, _coach) = (Text(student), Text(coach));
        _connection = new SqliteConnection($"Data Source={file}");
        _connection.Open();
        using var settings = _connection.CreateCommand();
        settings.CommandText = "PRAGMA busy_timeout=5000; PRAGMA secure_delete=ON;";
        settings.ExecuteNonQuery();
    }

    public void Import(byte[] file)
    {
        using var transaction = _connection.BeginTransaction();
        using var lessons = Prepare("INSERT INTO \"Lessons\" (\"Id\", \"StudentId\", \"CoachId\", \"HeldOn\", \"Club\", \"Kind\", \"Observations\", \"Notes\", \"CreatedAt\", \"Version\", \"Sheet\") VALUES ($a, $b, $c, $d, $e, 'lesson', '', '', $f, 1, '')", 6);
        using var takes = Prepare("INSERT INTO \"Takes\" (\"Id\", \"LessonId\", \"View\", \"Swing\", \"AddedAt\") VALUES ($a, $b, 'device', $c, $d)", 4);
        using var readings = Prepare("INSERT INTO \"Readings\" (\"Id\", \"LessonId\", \"TakeId\", \"Measure\", \"Value\", \"Swing\", \"Instrument\", \"EnteredAt\") VALUES ($a, $b, $c, $d, $e, $f, 'radar', $g)", 7);
        foreach (var command in new[] { lessons, takes, readings }) command.Transaction = transaction;
        using var reader = CsvReader.Create(new StringReader(Encoding.UTF8.GetString(file)), new CsvReaderOptions { Separator = ',' }, leaveOpen: false);
        var (key, lesson, swing, at) = ("", "", 0, "2026-01-01 00:00:00");
        while (reader.Read())
        {
            var (day, club) = (reader.GetString(0), reader.GetString(1));
            if (key != day + club)
            {
                (key, lesson, swing) = (day + club, Id(), 0);
                Run(lessons, lesson, _student, _coach, day, "driver", at);
            }

            var take = Id();
            Run(takes, take, lesson, ++swing, at);
            for (var i = 0; i < Measures.Length; i++) Run(readings, Id(), lesson, take, Measures[i], double.Parse(reader.GetString(i + FirstMeasure), CultureInfo.InvariantCulture), swing, at);
        }

        transaction.Commit();
    }

    public void Dispose() => _connection.Dispose();

    private SqliteCommand Prepare(string sql, int parameters)
    {
        var command = _connection.CreateCommand();
        command.CommandText = sql;
        for (var i = 0; i < parameters; i++) command.Parameters.Add(new SqliteParameter { ParameterName = $"${(char)('a' + i)}" });
        return command;
    }

    private static void Run(SqliteCommand command, params object[] values)
    {
        for (var i = 0; i < values.Length; i++) command.Parameters[i].Value = values[i];
        command.ExecuteNonQuery();
    }

    // Ids that grow, as the office's do.
    private string Id() => string.Create(CultureInfo.InvariantCulture, $"0B000000-0000-7000-8000-{++_next:X12}");

    private static string Text(Guid id) => id.ToString().ToUpperInvariant();
}
