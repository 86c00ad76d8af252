namespace CoachOffice.Web.Shell.Security;

/// <summary>Counts what browsers report as blocked; any report means a page of ours breaks its own policy.</summary>
internal sealed class CspReports
{
    private int _count;

    /// <summary>Reports since the office started.</summary>
    public int Count => Volatile.Read(ref _count);

    public void Add() => Interlocked.Increment(ref _count);
}
