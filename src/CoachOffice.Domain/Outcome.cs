using System.Diagnostics.CodeAnalysis;

namespace CoachOffice.Domain;

/// <summary>Either a value or one or more refusals; never both, never neither.</summary>
public sealed class Outcome<T>
{
    private readonly T? _value;

    private Outcome(T? value, IReadOnlyList<Refusal> refusals)
    {
        _value = value;
        Refusals = refusals;
    }

    /// <summary>Why not; empty when the operation succeeded.</summary>
    public IReadOnlyList<Refusal> Refusals { get; }

    /// <summary>True when there is a value.</summary>
    public bool Succeeded => Refusals.Count == 0;

    /// <summary>The value. Asking for it after a refusal is a defect and throws.</summary>
    public T Value => Succeeded ? _value! : throw new InvalidOperationException($"Refused: {Refusals[0].Code}.");

    /// <summary>The value when there is one.</summary>
    public bool TryGet([MaybeNullWhen(false)] out T value)
    {
        value = _value;
        return Succeeded;
    }

    /// <summary>A success.</summary>
    public static implicit operator Outcome<T>(T value) => new(value, []);

    /// <summary>A refusal.</summary>
    public static implicit operator Outcome<T>(Refusal refusal) => new(default, [refusal]);

    /// <summary>A success whose type is an interface, which the language does not convert by itself.</summary>
    public static Outcome<T> Of(T value) => new(value, []);

    /// <summary>Several refusals at once, e.g. of one form.</summary>
    public static Outcome<T> Refused(IReadOnlyList<Refusal> refusals) =>
        refusals.Count > 0 ? new(default, refusals) : throw new ArgumentException("A refusal needs a reason.", nameof(refusals));
}
