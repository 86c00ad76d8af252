using System.Globalization;
using System.Text;
using CoachOffice.Domain.Ledger;
using CsvHelper;

namespace CoachOffice.UseCases;

/// <summary>
/// Writes a table as RFC 4180 wants it, in UTF-8 with its mark so that a spreadsheet knows the letters. Text that a spreadsheet would take for a formula gets an apostrophe in front
/// (OWASP ASVS 5.0.0, V1.2.10; with the line feed of OWASP's page on CSV injection), numbers never.
/// </summary>
internal sealed class CsvSheet : IDisposable
{
    // The library's own protection refuses to look for NUL.
    private const string Risky = "=+-@\t\r\n\0";

    private readonly MemoryStream _bytes = new();
    private readonly CsvWriter _writer;

    public CsvSheet()
    {
        _writer = CsvWriter.Create(_bytes, new CsvWriterOptions { WriteByteOrderMark = true }, leaveOpen: true);
    }

    /// <summary>Writes a cell of text. One that begins as an escaped one would gets an apostrophe too, so that <see cref="Plain"/> gives every text back as it was.</summary>
    public CsvSheet Text(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        _writer.WriteField(IsRisky(text.TrimStart('\'')) ? "'" + text : text);
        return this;
    }

    /// <summary>Writes a number, or an empty cell.</summary>
    public CsvSheet Number(double? number)
    {
        _writer.WriteField(number?.ToString("R", CultureInfo.InvariantCulture) ?? "", CsvQuoting.WhenNeeded);
        return this;
    }

    /// <summary>Writes an amount of money: plain digits with a point, a number also when it begins with a minus.</summary>
    public CsvSheet Amount(Money amount)
    {
        _writer.WriteField(amount.Amount, CsvQuoting.WhenNeeded);
        return this;
    }

    /// <summary>Ends the row.</summary>
    public void End() => _writer.EndRecord();

    /// <summary>A row of text.</summary>
    public void Row(IEnumerable<string> cells)
    {
        ArgumentNullException.ThrowIfNull(cells);
        foreach (var cell in cells) Text(cell);
        End();
    }

    /// <summary>All that was written.</summary>
    public byte[] Bytes()
    {
        _writer.Flush();
        return _bytes.ToArray();
    }

    /// <summary>A cell as it was before it was written here; other cells stay as they are.</summary>
    public static string Plain(string cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return cell.StartsWith('\'') && IsRisky(cell.TrimStart('\'')) ? cell[1..] : cell;
    }

    public void Dispose()
    {
        _writer.Dispose();
        _bytes.Dispose();
    }

    private static bool IsRisky(string text) => text.Length > 0 && Risky.Contains(text[0], StringComparison.Ordinal);
}
