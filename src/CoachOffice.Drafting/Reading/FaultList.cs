using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading;

/// <summary>Collects everything that is wrong while a reading goes on to the end.</summary>
internal sealed class FaultList
{
    private readonly List<Fault> _faults = [];
    private readonly List<Fault> _warnings = [];

    public int Count => _faults.Count;

    public void Add(Position at, string path, string message) => _faults.Add(new Fault(at.File, at.Line, at.Column, path, message));

    public void Add(Node node, string message) => Add(node.At, node.Path, message);

    public void Add(IEnumerable<Fault> faults) => _faults.AddRange(faults);

    public void Warn(Node node, string message) => _warnings.Add(new Fault(node.At.File, node.At.Line, node.At.Column, node.Path, message));

    public ReadResult<T> Result<T>(Func<T> value)
        where T : class => new(Count == 0 ? value() : null, [.. _faults.Distinct().Order()], [.. _warnings.Distinct().Order()]);
}
