using System.Globalization;

namespace CoachOffice.Drafting.Ordering;

/// <summary>The place of a candidate in the order of work: eight integers, compared one after the other, smaller first. Visible in the trace.</summary>
/// <param name="Parts">k1 to k8.</param>
internal sealed record OrderKey(IReadOnlyList<int> Parts) : IComparable<OrderKey>
{
    public int CompareTo(OrderKey? other)
    {
        if (other is null) return 1;
        for (var i = 0; i < Parts.Count; i++)
        {
            if (Parts[i].CompareTo(other.Parts[i]) is var order and not 0) return order;
        }

        return 0;
    }

    /// <summary>As in the trace: <c>k1=1 k2=1 ...</c>.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"k1={Parts[0]} k2={Parts[1]} k3={Parts[2]} k4={Parts[3]} k5={Parts[4]} k6={Parts[5]} k7={Parts[6]} k8={Parts[7]}");
}
