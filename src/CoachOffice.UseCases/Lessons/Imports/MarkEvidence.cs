using System.Buffers;
using CoachOffice.Domain.Lessons.Imports;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>What numbers show of how their decimals are written. 12,5 can only be a decimal comma; 1,234 can be either.</summary>
internal sealed class MarkEvidence
{
    private static readonly SearchValues<char> Digits = SearchValues.Create("0123456789.,");

    private int _points;
    private int _commas;
    private int _either;

    /// <summary>The mark when nothing speaks against it; null when it must be asked for.</summary>
    public DecimalMark? Certain => (_points, _commas, _either) switch
    {
        ( > 0, 0, _) => DecimalMark.Point,
        (0, > 0, _) => DecimalMark.Comma,
        (0, 0, 0) => DecimalMark.Point,
        _ => null,
    };

    /// <summary>True when any number has a mark at all.</summary>
    public bool HasMarks => _points + _commas + _either > 0;

    /// <summary>True when some numbers can only be written the one way and some only the other.</summary>
    public bool IsMixed => _points > 0 && _commas > 0;

    /// <summary>Takes a cell into account; what is no number says nothing.</summary>
    public void Look(string cell)
    {
        var (points, commas) = (cell.Count(c => c == '.'), cell.Count(c => c == ','));
        if (points + commas == 0 || !IsOfDigits(cell)) return;
        if (points > 0 && commas > 0) Count(cell.LastIndexOf('.') > cell.LastIndexOf(','));
        else if (points + commas > 1) Count(commas > 1);
        else LookAtOne(cell, points > 0 ? '.' : ',');
    }

    /// <summary>Adds what another column showed.</summary>
    public void Add(MarkEvidence other)
    {
        _points += other._points;
        _commas += other._commas;
        _either += other._either;
    }

    private void LookAtOne(string cell, char mark)
    {
        var bare = cell.TrimStart('-', '+', '\u2212');
        var at = bare.IndexOf(mark, StringComparison.Ordinal);
        if (at is >= 1 and <= 3 && bare.Length - at - 1 == 3 && bare[0] != '0') _either++;
        else Count(mark == '.');
    }

    private void Count(bool isPoint)
    {
        if (isPoint) _points++;
        else _commas++;
    }

    // Also keeps days such as 26.11.2026 out: their parts are no thousands.
    private static bool IsOfDigits(string cell)
    {
        var bare = cell.AsSpan().TrimStart("-+\u2212");
        if (bare.Length == 0 || bare.ContainsAnyExcept(Digits)) return false;
        return bare.Count('.') + bare.Count(',') <= 1 || cell.Split('.', ',')[1..^1].All(p => p.Length == 3);
    }
}
