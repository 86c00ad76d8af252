using System.Collections.Concurrent;

namespace CoachOffice.UseCases.FollowUps.Bounces;

/// <summary>How far mailbox files were read by this program. After a start they are read once more from the beginning, which changes nothing.</summary>
public sealed class BounceMarks
{
    private readonly ConcurrentDictionary<string, long> _upTo = new(StringComparer.Ordinal);

    /// <summary>Where to go on in a file of this length.</summary>
    public long ReadUpTo(string file, long length) => _upTo.TryGetValue(file, out var read) && read <= length ? read : 0;

    /// <summary>Read up to there.</summary>
    public void Note(string file, long length) => _upTo[file] = length;
}
