namespace CoachOffice.Drafting.Reading.Nodes;

/// <summary>A list.</summary>
internal sealed class ListNode(Position at, string path, IReadOnlyList<Node> items) : Node(at, path)
{
    public IReadOnlyList<Node> Items { get; } = items;

    public override string Kind => "a list";
}
