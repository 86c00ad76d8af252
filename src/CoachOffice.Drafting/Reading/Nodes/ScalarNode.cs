namespace CoachOffice.Drafting.Reading.Nodes;

/// <summary>A single value.</summary>
internal sealed class ScalarNode(Position at, string path, ScalarKind scalar, string text) : Node(at, path)
{
    public ScalarKind Scalar { get; } = scalar;

    public string Text { get; } = text;

    /// <summary>Columns between the value's position and its first letter: 1 behind a quote.</summary>
    public int Lead { get; init; }

    public override string Kind => Scalar switch
    {
        ScalarKind.Nothing => "nothing",
        ScalarKind.Number => $"the number {Text}",
        ScalarKind.Flag => Text,
        _ => $"the text {Words.Quote(Text)}",
    };

    /// <summary>Where a letter of the text stands, for texts on one line.</summary>
    public Position Letter(int index) => At with { Column = At.Column + Lead + index };
}
