using System.Linq.Expressions;
using System.Runtime.CompilerServices;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace CoachOffice.Data;

/// <summary>
/// A query of a page that is opened all day, translated once: finding a kept translation again by its expression costs about as much as the answer.
/// One for each model, as a test process may hold both databases.
/// </summary>
/// <typeparam name="TAsked">What it is asked with: a value the database knows, such as an id or a day.</typeparam>
/// <typeparam name="TRow">What comes back; entities are tracked unless the query says otherwise.</typeparam>
public sealed class CompiledQuery<TAsked, TRow>(Expression<Func<OfficeDb, TAsked, IQueryable<TRow>>> query)
{
    private readonly ConditionalWeakTable<IModel, Func<OfficeDb, TAsked, IAsyncEnumerable<TRow>>> _byModel = [];

    /// <summary>Every row.</summary>
    public Task<List<TRow>> Rows(OfficeDb db, TAsked asked, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(db);
        return _byModel.GetValue(db.Model, _ => EF.CompileAsyncQuery(query))(db, asked).Gathered(stop);
    }
}
