using CoachOffice.Domain.Measuring;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading.Entries;

/// <summary>Reads faults: <c>measure.low</c>, <c>measure.high</c> and, for both sides, <c>measure.out</c>.</summary>
internal sealed class FaultSyntax(Shelf shelf)
{
    private static readonly string[] Ends = ["low", "high", "out"];

    /// <summary>A side that is no fault: low or high.</summary>
    public static Side SideOf(Node node, FaultList faults)
    {
        var side = Single.Word<Side>(node, faults);
        if (side == Side.None && node is ScalarNode { Text: "none" }) faults.Add(node, "write low or high");
        return side;
    }

    /// <summary>The faults of a list; <c>.out</c> stands for low then high.</summary>
    public IReadOnlyList<FaultId> List(Entry entry, IReadOnlyList<Node> items)
    {
        var found = new List<FaultId>();
        foreach (var item in items)
        {
            foreach (var fault in OneOrBoth(item))
            {
                if (found.Contains(fault)) entry.Faults.Add(item, $"{fault} stands in the list already; leave it out");
                else found.Add(fault);
            }
        }

        return found;
    }

    /// <summary>One fault, or both sides of a measure.</summary>
    public IReadOnlyList<FaultId> OneOrBoth(Node node)
    {
        if (Split(node) is not { } parts) return [];
        var before = shelf.Faults.Count;
        var measure = shelf.Ids.MeasureIn((ScalarNode)node, parts.Measure, 0);
        if (shelf.Faults.Count > before) return [];
        return parts.End switch
        {
            "low" => [new FaultId(measure, Side.Low)],
            "high" => [new FaultId(measure, Side.High)],
            _ => [new FaultId(measure, Side.Low), new FaultId(measure, Side.High)],
        };
    }

    private (string Measure, string End)? Split(Node node)
    {
        var text = node is ScalarNode { Scalar: ScalarKind.Text } scalar ? scalar.Text : null;
        var dot = text?.LastIndexOf('.') ?? -1;
        if (dot > 0 && Ends.Contains(text![(dot + 1)..])) return (text[..dot], text[(dot + 1)..]);
        shelf.Faults.Add(node, $"a fault is expected, not {node.Kind}; write measure.low, measure.high or measure.out");
        return null;
    }
}
