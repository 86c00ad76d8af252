using System.Buffers;
using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;

namespace CoachOffice.Data.Moving;

/// <summary>Adds rows up to a <see cref="TablePrint"/>. Each value is written with its length, so that no two rows read alike.</summary>
internal sealed class TableSum(MovedTable table)
{
    private readonly ulong[] _sum = new ulong[4];
    private readonly ArrayBufferWriter<byte> _row = new();
    private long _rows;

    public void Add(ReadOnlySpan<object?> row)
    {
        _row.ResetWrittenCount();
        for (var i = 0; i < row.Length; i++) Write(row[i], table.Columns[i].IsJson);
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(_row.WrittenSpan, hash);
        for (var i = 0; i < _sum.Length; i++) _sum[i] = unchecked(_sum[i] + BinaryPrimitives.ReadUInt64LittleEndian(hash[(8 * i)..]));
        _rows++;
    }

    public TablePrint Print() => new(table.Name, _rows, string.Concat(_sum.Select(part => part.ToString("x16"))));

    private void Write(object? value, bool isJson)
    {
        switch (value)
        {
            case null: Write('0', []); break;
            case string text: Write('t', Encoding.UTF8.GetBytes(isJson ? Sorted(text) : text)); break;
            case byte[] bytes: Write('b', bytes); break;
            default: Write('v', Number(value)); break;
        }
    }

    private void Write(char kind, ReadOnlySpan<byte> bytes)
    {
        Span<byte> head = stackalloc byte[9];
        head[0] = (byte)kind;
        BinaryPrimitives.WriteInt64LittleEndian(head[1..], bytes.Length);
        _row.Write(head);
        _row.Write(bytes);
    }

    private static byte[] Number(object value) => value switch
    {
        Guid id => id.ToByteArray(bigEndian: true),
        bool yes => [yes ? (byte)1 : (byte)0],
        short or int or long => BitConverter.GetBytes(Convert.ToInt64(value)),

        // SQLite keeps a whole number as one, which has no negative nought.
        double number => BitConverter.GetBytes(number == 0 ? 0.0 : number),
        DateOnly day => BitConverter.GetBytes(day.DayNumber),
        TimeOnly time => BitConverter.GetBytes(time.Ticks),
        DateTime at => BitConverter.GetBytes(at.Ticks),
        DateTimeOffset at => BitConverter.GetBytes(at.UtcTicks),
        _ => throw new NotSupportedException($"Nothing says how a {value.GetType().Name} is added up."),
    };

    /// <summary>PostgreSQL keeps a document with its keys in an order of its own.</summary>
    private static string Sorted(string json) => Sorted(JsonNode.Parse(json))?.ToJsonString() ?? "null";

    private static JsonNode? Sorted(JsonNode? node) => node switch
    {
        JsonObject thing => new JsonObject(thing.OrderBy(p => p.Key, StringComparer.Ordinal).Select(p => KeyValuePair.Create(p.Key, Sorted(p.Value)))),
        JsonArray list => new JsonArray([.. list.Select(Sorted)]),
        _ => node?.DeepClone(),
    };
}
