namespace CoachOffice.Data.Bulk;

/// <summary>Writes many new rows at once, past the tracking of changes, in the transaction that is under way.</summary>
public interface IManyRows
{
    /// <summary>Adds rows of one table; rows they point to must be there.</summary>
    Task Add<T>(IReadOnlyList<T> rows, CancellationToken stop)
        where T : class;
}
