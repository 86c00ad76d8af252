using System.Text;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>Which characters a file's bytes are: UTF-8 and UTF-16 with or without their mark, else Windows-1252, the one Latin-1 of spreadsheets, which fits every byte.</summary>
internal static class FileText
{
    private const int Looked = 4096;

    private static readonly Encoding Western = CodePagesEncodingProvider.Instance.GetEncoding(1252)!;

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>A reader from the file's beginning, or null when the file is no text.</summary>
    public static StreamReader? Open(string path)
    {
        if (EncodingOf(path) is not { } encoding) return null;
        return new StreamReader(path, encoding, detectEncodingFromByteOrderMarks: true, new FileStreamOptions { Options = FileOptions.SequentialScan, BufferSize = 1 << 16, Share = FileShare.Read });
    }

    private static Encoding? EncodingOf(string path)
    {
        using var file = File.OpenRead(path);
        var start = new byte[Looked];
        var count = file.ReadAtLeast(start, Looked, throwOnEndOfStream: false);
        var head = start.AsSpan(0, count);
        if (head.StartsWith(Encoding.Unicode.Preamble) || head.StartsWith(Encoding.BigEndianUnicode.Preamble)) return Encoding.Unicode;
        if (head.Contains((byte)0)) return Sixteen(head);
        file.Position = 0;
        return IsUtf8(file) ? Utf8 : Western;
    }

    // Every second byte of plain letters is zero in UTF-16; zeros anywhere else are no text.
    private static Encoding? Sixteen(ReadOnlySpan<byte> head)
    {
        var (even, odd) = (0, 0);
        for (var i = 0; i + 1 < head.Length; i += 2)
        {
            if (head[i] == 0) even++;
            if (head[i + 1] == 0) odd++;
        }

        var pairs = head.Length / 2;
        if (even == 0 && odd > pairs / 2) return Encoding.Unicode;
        return odd == 0 && even > pairs / 2 ? Encoding.BigEndianUnicode : null;
    }

    private static bool IsUtf8(Stream file)
    {
        using var reader = new StreamReader(file, Utf8, detectEncodingFromByteOrderMarks: false, 1 << 16, leaveOpen: true);
        var piece = new char[1 << 14];
        try
        {
            while (reader.Read(piece, 0, piece.Length) > 0)
            {
                // Reading is the question.
            }

            return true;
        }
        catch (DecoderFallbackException)
        {
            return false;
        }
    }
}
