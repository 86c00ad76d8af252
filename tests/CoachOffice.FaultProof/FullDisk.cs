using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace CoachOffice.FaultProof;

/// <summary>While it is full nothing can be written, whatever the database would say.</summary>
internal sealed class FullDisk : DbCommandInterceptor
{
    public bool IsFull { get; set; }

    public override ValueTask<InterceptionResult<int>> NonQueryExecutingAsync(DbCommand command, CommandEventData eventData, InterceptionResult<int> result, CancellationToken cancellationToken = default)
    {
        Refuse();
        return base.NonQueryExecutingAsync(command, eventData, result, cancellationToken);
    }

    public override ValueTask<InterceptionResult<DbDataReader>> ReaderExecutingAsync(DbCommand command, CommandEventData eventData, InterceptionResult<DbDataReader> result, CancellationToken cancellationToken = default)
    {
        if (!command.CommandText.StartsWith("SELECT", StringComparison.Ordinal)) Refuse();
        return base.ReaderExecutingAsync(command, eventData, result, cancellationToken);
    }

    private void Refuse()
    {
        if (IsFull) throw new NoRoomException();
    }

    private sealed class NoRoomException : DbException;
}
