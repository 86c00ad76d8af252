using System.Buffers;
using System.Text.Unicode;

namespace CoachOffice.Drafting.Reading.Nodes;

/// <summary>The gate every file passes: not too big, not empty, clean UTF-8.</summary>
internal static class FileText
{
    /// <summary>No rule file or lesson a person writes is bigger; 1 MiB.</summary>
    public const int MostBytes = 1 << 20;

    /// <summary>The bytes without a byte order mark, or null with a fault.</summary>
    public static ReadOnlyMemory<byte>? Check(string file, ReadOnlyMemory<byte> bytes, FaultList faults)
    {
        if (bytes.Length > MostBytes)
        {
            TooBig(file, bytes.Length, faults);
            return null;
        }

        if (bytes.Span.StartsWith(Mark)) bytes = bytes[Mark.Length..];
        var text = new char[bytes.Length];
        if (Utf8.ToUtf16(bytes.Span, text, out var read, out _, replaceInvalidSequences: false) != OperationStatus.Done)
        {
            faults.Add(new TextCursor(file, bytes).At(read), Fault.WholeFile, $"byte {read + 1} is not UTF-8; save the file as UTF-8");
            return null;
        }

        return bytes;
    }

    /// <summary>Refuses a file by its size alone.</summary>
    public static void TooBig(string file, long size, FaultList faults) =>
        faults.Add(new Position(file, 1, 1), Fault.WholeFile, $"the file has {size} bytes; at most {MostBytes} are read");

    private static ReadOnlySpan<byte> Mark => [0xEF, 0xBB, 0xBF];
}
