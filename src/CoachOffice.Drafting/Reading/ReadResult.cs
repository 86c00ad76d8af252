using System.Diagnostics.CodeAnalysis;

namespace CoachOffice.Drafting.Reading;

/// <summary>What was read, or every fault that kept it from being read; never both. Warnings may come with either.</summary>
public sealed class ReadResult<T>
    where T : class
{
    private readonly T? _value;

    internal ReadResult(T? value, IReadOnlyList<Fault> faults, IReadOnlyList<Fault> warnings)
    {
        _value = faults.Count == 0 ? value ?? throw new ArgumentNullException(nameof(value), "Nothing was read and no fault was found.") : null;
        Faults = faults;
        Warnings = warnings;
    }

    /// <summary>All faults, sorted; empty when there is a value.</summary>
    public IReadOnlyList<Fault> Faults { get; }

    /// <summary>Things accepted that the person should know of, sorted.</summary>
    public IReadOnlyList<Fault> Warnings { get; }

    /// <summary>True when there is a value.</summary>
    public bool Succeeded => Faults.Count == 0;

    /// <summary>The value. Asking for it when there are faults is a defect and throws <see cref="InvalidOperationException"/>.</summary>
    public T Value => _value ?? throw new InvalidOperationException($"Not read: {Faults[0]}");

    /// <summary>The value when there is one.</summary>
    public bool TryGet([NotNullWhen(true)] out T? value)
    {
        value = _value;
        return Succeeded;
    }
}
