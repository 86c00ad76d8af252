namespace CoachOffice.Data.Moving;

/// <summary>What differs by provider when whole tables are read and written.</summary>
internal interface IRowMover
{
    /// <summary>Begins a transaction that reads all tables as of one moment; with <paramref name="still"/> nobody writes until it ends.</summary>
    Task BeginReading(IReadOnlyList<MovedTable> tables, bool still, CancellationToken stop);

    /// <summary>Begins a transaction as the only writer, in which rows may point at rows of the same table that come later.</summary>
    Task BeginWriting(IReadOnlyList<MovedTable> tables, CancellationToken stop);

    /// <summary>Writes rows, each valid until the next is asked for; gives how many.</summary>
    Task<long> Write(MovedTable table, IAsyncEnumerable<object?[]> rows, CancellationToken stop);

    /// <summary>Lets the database number new rows after those written.</summary>
    Task CountOn(MovedTable table, CancellationToken stop);
}
