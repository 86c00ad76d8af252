using System.Linq.Expressions;
using System.Runtime.CompilerServices;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace CoachOffice.Data;

/// <summary>A <see cref="CompiledQuery{TAsked, TRow}"/> that is asked with two values.</summary>
/// <typeparam name="TFirst">The first.</typeparam>
/// <typeparam name="TSecond">The second.</typeparam>
/// <typeparam name="TRow">What comes back; entities are tracked unless the query says otherwise.</typeparam>
public sealed class CompiledQueryOfTwo<TFirst, TSecond, TRow>(Expression<Func<OfficeDb, TFirst, TSecond, IQueryable<TRow>>> query)
{
    private readonly ConditionalWeakTable<IModel, Func<OfficeDb, TFirst, TSecond, IAsyncEnumerable<TRow>>> _byModel = [];

    /// <summary>Every row.</summary>
    public Task<List<TRow>> Rows(OfficeDb db, TFirst first, TSecond second, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(db);
        return _byModel.GetValue(db.Model, _ => EF.CompileAsyncQuery(query))(db, first, second).Gathered(stop);
    }
}
