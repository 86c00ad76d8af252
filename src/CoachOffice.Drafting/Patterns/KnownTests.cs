using System.Collections.Concurrent;
using System.Linq.Expressions;
using FastExpressionCompiler;
using NRules.Extensibility;

namespace CoachOffice.Drafting.Patterns;

/// <summary>
/// Compiles the tests of a rulebook, but takes those that another one has word for word from it: an edit touches one pattern or two, and a test that ran before is machine code already,
/// while the first run of a new one waits until it is. Several times faster than the platform's own compiler, to code as fast.
/// </summary>
/// <param name="before">Tests of a rulebook that is much the same.</param>
internal sealed class KnownTests(KnownTests? before) : IExpressionCompiler
{
    // The engine may put a compilation off until a draft asks for it, on whatever thread.
    private readonly ConcurrentDictionary<string, Delegate> _mine = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, Delegate>? _before = before?._mine;

    /// <inheritdoc/>
    public TDelegate Compile<TDelegate>(Expression<TDelegate> expression)
        where TDelegate : Delegate
    {
        if (ExpressionKey.Of(expression) is not { } key) return expression.CompileFast();
        return (TDelegate)_mine.GetOrAdd(key, _ => _before?.GetValueOrDefault(key) ?? expression.CompileFast());
    }
}
