namespace CoachOffice.UseCases.FollowUps;

/// <summary>No more than so many messages in any minute; 0 means no limit.</summary>
internal sealed class MailRate(int perMinute, TimeProvider time)
{
    private static readonly TimeSpan Minute = TimeSpan.FromMinutes(1);

    private readonly Queue<long> _gone = new();

    /// <summary>Counts one more, or says no.</summary>
    public bool Take()
    {
        if (perMinute <= 0) return true;
        while (_gone.TryPeek(out var first) && time.GetElapsedTime(first) >= Minute) _gone.Dequeue();
        if (_gone.Count >= perMinute) return false;
        _gone.Enqueue(time.GetTimestamp());
        return true;
    }
}
