namespace CoachOffice.Domain.Measuring;

/// <summary>A measure out of range on one side, written <c>measure.low</c> or <c>measure.high</c>.</summary>
public readonly record struct FaultId(MeasureId Measure, Side Side) : IComparable<FaultId>
{
    /// <summary>Reads <c>measure.low</c> or <c>measure.high</c>; null when it is neither.</summary>
    public static FaultId? Find(string? text)
    {
        var dot = text?.LastIndexOf('.') ?? -1;
        if (dot <= 0 || !Terms.TryParse<Side>(text![(dot + 1)..], out var side) || side == Side.None) return null;
        return new FaultId(MeasureId.From(text[..dot]), side);
    }

    /// <summary>Reads a text that is known to be good; throws <see cref="FormatException"/> otherwise.</summary>
    public static FaultId Parse(string text) => Find(text) ?? throw new FormatException($"'{text}' is no fault: write measure.low or measure.high.");

    /// <summary>Ordinal by text, so that every list has one order.</summary>
    public int CompareTo(FaultId other)
    {
        var (one, two) = (Measure.Value, other.Measure.Value);
        if (one == two) return string.CompareOrdinal(Terms.Of(Side), Terms.Of(other.Side));

        // Where one id begins with the other, the dot after it counts; anywhere before, no text has to be made.
        var shared = Math.Min(one.Length, two.Length);
        var order = one.AsSpan(0, shared).SequenceCompareTo(two.AsSpan(0, shared));
        return order != 0 ? order : string.CompareOrdinal(ToString(), other.ToString());
    }

    public static bool operator <(FaultId left, FaultId right) => left.CompareTo(right) < 0;

    public static bool operator >(FaultId left, FaultId right) => left.CompareTo(right) > 0;

    public static bool operator <=(FaultId left, FaultId right) => left.CompareTo(right) <= 0;

    public static bool operator >=(FaultId left, FaultId right) => left.CompareTo(right) >= 0;

    /// <inheritdoc/>
    public override string ToString() => $"{Measure.Value}.{Terms.Of(Side)}";
}
