namespace CoachOffice.Drafting.Reading;

/// <summary>One thing wrong in a file that a person wrote, where it stands and what would be right.</summary>
/// <param name="File">The file as the person knows it.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column in characters, from 1.</param>
/// <param name="Path">Way to the value inside the file, e.g. <c>patterns[3].when[0]</c>; <c>file</c> for the file as a whole.</param>
/// <param name="Message">What is wrong and what would be right.</param>
public sealed record Fault(string File, int Line, int Column, string Path, string Message) : IComparable<Fault>
{
    /// <summary>The path that stands for the file as a whole.</summary>
    public const string WholeFile = "file";

    /// <summary>By file, line, column, then text: every list of faults has one order.</summary>
    public int CompareTo(Fault? other)
    {
        if (other is null) return 1;
        var order = string.CompareOrdinal(File, other.File);
        if (order == 0) order = Line.CompareTo(other.Line);
        if (order == 0) order = Column.CompareTo(other.Column);
        if (order == 0) order = string.CompareOrdinal(Path, other.Path);
        return order == 0 ? string.CompareOrdinal(Message, other.Message) : order;
    }

    public static bool operator <(Fault left, Fault right) => Comparer<Fault>.Default.Compare(left, right) < 0;

    public static bool operator >(Fault left, Fault right) => Comparer<Fault>.Default.Compare(left, right) > 0;

    public static bool operator <=(Fault left, Fault right) => Comparer<Fault>.Default.Compare(left, right) <= 0;

    public static bool operator >=(Fault left, Fault right) => Comparer<Fault>.Default.Compare(left, right) >= 0;

    /// <summary>One line: <c>file:line:column: path: message</c>.</summary>
    public override string ToString() => $"{File}:{Line}:{Column}: {Path}: {Message}";
}
