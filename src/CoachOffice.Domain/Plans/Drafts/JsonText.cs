using System.Globalization;
using System.Text;

namespace CoachOffice.Domain.Plans.Drafts;

/// <summary>Builds indented JSON text key by key. Numbers are written in their shortest decimal form.</summary>
internal sealed class JsonText
{
    private readonly StringBuilder _text = new();
    private int _depth;
    private bool _first = true;

    public void Object(string? key, Action members) => Block(key, '{', '}', members);

    public void Array<T>(string key, IReadOnlyList<T> items, Action<T> item) =>
        Block(key, '[', ']', () =>
        {
            foreach (var one in items) item(one);
        });

    public void Text(string? key, string? value)
    {
        Begin(key);
        if (value is null) _text.Append("null");
        else Quote(value);
    }

    public void Number(string? key, double? value, int? decimals = null)
    {
        Begin(key);
        _text.Append(value is { } number ? Shortest(number, decimals) : "null");
    }

    public override string ToString() => _text.ToString() + "\n";

    /// <summary>Half away from zero, never an exponent, never minus zero.</summary>
    private static string Shortest(double value, int? decimals)
    {
        var exact = decimal.Parse(value.ToString("R", CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture);
        if (decimals is { } places) exact = Math.Round(exact, places, MidpointRounding.AwayFromZero);
        var text = exact.ToString(CultureInfo.InvariantCulture);
        if (text.Contains('.', StringComparison.Ordinal)) text = text.TrimEnd('0').TrimEnd('.');
        return text is "-0" ? "0" : text;
    }

    private void Block(string? key, char open, char close, Action content)
    {
        Begin(key);
        _text.Append(open);
        _depth++;
        _first = true;
        content();
        _depth--;
        if (!_first) NewLine();
        _first = false;
        _text.Append(close);
    }

    private void Begin(string? key)
    {
        if (!_first) _text.Append(',');
        if (_depth > 0) NewLine();
        _first = false;
        if (key is null) return;
        Quote(key);
        _text.Append(": ");
    }

    private void NewLine() => _text.Append('\n').Append(' ', 2 * _depth);

    private void Quote(string value)
    {
        _text.Append('"');
        foreach (var letter in value)
        {
            if (letter is '"' or '\\') _text.Append('\\').Append(letter);
            else if (letter == '\n') _text.Append("\\n");
            else if (letter == '\t') _text.Append("\\t");
            else if (letter < ' ') _text.Append(CultureInfo.InvariantCulture, $"\\u{(int)letter:x4}");
            else _text.Append(letter);
        }

        _text.Append('"');
    }
}
