using System.Linq.Expressions;
using System.Runtime.CompilerServices;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace CoachOffice.Data;

/// <summary>A <see cref="CompiledQuery{TAsked, TRow}"/> that is asked with three values.</summary>
/// <typeparam name="TFirst">The first.</typeparam>
/// <typeparam name="TSecond">The second.</typeparam>
/// <typeparam name="TThird">The third.</typeparam>
/// <typeparam name="TRow">What comes back; entities are tracked unless the query says otherwise.</typeparam>
public sealed class CompiledQueryOfThree<TFirst, TSecond, TThird, TRow>(Expression<Func<OfficeDb, TFirst, TSecond, TThird, IQueryable<TRow>>> query)
{
    private readonly ConditionalWeakTable<IModel, Func<OfficeDb, TFirst, TSecond, TThird, IAsyncEnumerable<TRow>>> _byModel = [];

    /// <summary>Every row, asked with a first, a second and a third value.</summary>
    public Task<List<TRow>> Rows(OfficeDb db, (TFirst First, TSecond Second, TThird Third) asked, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(db);
        return _byModel.GetValue(db.Model, _ => EF.CompileAsyncQuery(query))(db, asked.First, asked.Second, asked.Third).Gathered(stop);
    }
}
