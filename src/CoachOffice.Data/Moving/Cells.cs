using System.Data.Common;

namespace CoachOffice.Data.Moving;

/// <summary>Reads one value in the type it has on the way between databases, the same whichever wrote it.</summary>
internal static class Cells
{
    private static readonly Dictionary<Type, Func<DbDataReader, int, object>> Readers = new()
    {
        [typeof(string)] = (reader, i) => reader.GetString(i),
        [typeof(Guid)] = (reader, i) => reader.GetGuid(i),
        [typeof(bool)] = (reader, i) => reader.GetBoolean(i),
        [typeof(short)] = (reader, i) => reader.GetInt16(i),
        [typeof(int)] = (reader, i) => reader.GetInt32(i),
        [typeof(long)] = (reader, i) => reader.GetInt64(i),
        [typeof(double)] = (reader, i) => reader.GetDouble(i),
        [typeof(byte[])] = (reader, i) => reader.GetFieldValue<byte[]>(i),
        [typeof(DateOnly)] = (reader, i) => reader.GetFieldValue<DateOnly>(i),
        [typeof(TimeOnly)] = (reader, i) => reader.GetFieldValue<TimeOnly>(i),
        [typeof(DateTime)] = (reader, i) => DateTime.SpecifyKind(reader.GetDateTime(i), DateTimeKind.Utc),
        [typeof(DateTimeOffset)] = (reader, i) => ToMicroseconds(reader.GetFieldValue<DateTimeOffset>(i).ToUniversalTime()),
    };

    /// <summary>True when values of this type can be moved.</summary>
    public static bool Knows(Type kind) => Readers.ContainsKey(kind);

    /// <summary>The values of the row the reader stands on, null where there is none.</summary>
    public static void Read(DbDataReader reader, MovedTable table, object?[] row)
    {
        for (var i = 0; i < row.Length; i++) row[i] = reader.IsDBNull(i) ? null : Readers[table.Columns[i].Kind](reader, i);
    }

    // PostgreSQL keeps no finer time; the accounts' library writes what the processor's clock gives.
    private static DateTimeOffset ToMicroseconds(DateTimeOffset at) => at.AddTicks(-(at.Ticks % TimeSpan.TicksPerMicrosecond));
}
